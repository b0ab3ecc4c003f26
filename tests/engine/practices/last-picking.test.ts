import { describe, expect, test } from "vitest";
import { HARVEST } from "../../../src/engine/practices/harvest.ts";
import { withCrops } from "../../winters.ts";
import { growingOf } from "../growth/growing.ts";
import { said, stepOf, titles, windows } from "./told.ts";

const MILD = withCrops("mediterranean", [
  "tomato: 3 plants",
  "eggplant: 3 plants",
  "bush beans: 2 rows",
  "basil: 6 plants",
  "broccoli: 8 plants",
  "courgette: 2 plants",
  "carrot: 2 rows",
]);
const last = (crop: string, acts: Readonly<Record<string, string>>) =>
  stepOf(HARVEST, growingOf(MILD, crop, { acts }), "last");
const OUT = { "set out": "2027-04-10" };

describe("the last picking", () => {
  test("has the sign of what is picked", () => {
    const sown = { start: "2027-03-20", up: "2027-04-08" };
    expect(said(last("bean", sown))).toContain("New flowers and pods grow few and small");
    expect(said(last("summer-squash", sown))).toContain("New fruit is small and misshapen");
    expect(said(last("basil", OUT))).toContain("New shoots are few and thin");
    expect(said(last("broccoli", { "set out": "2027-10-01" }))).toContain(
      "New shoots are few and thin",
    );
  });

  test("of beans before great heat says from when more are sown", () => {
    expect(said(last("bean", { start: "2027-03-20", up: "2027-04-08" }))).toMatch(
      /For more, sow again from about \d+ (July|Aug): in great heat flowers drop\./,
    );
  });

  test("comes without frost as nights grow too cool, green tomatoes with it", () => {
    const tomatoes = last("tomato", OUT);
    expect(titles(tomatoes ? [tomatoes] : [])).toEqual(["Pick the last tomatoes [bed]"]);
    expect(windows(tomatoes ? [tomatoes] : [])[0]).toMatch(/^last 1[01]-\d\d 1[12]-\d\d 12-/);
    expect(said(tomatoes)).toContain("the green ones too, which colour indoors");
    expect(said(last("eggplant", OUT))).not.toContain("green ones");
  });

  test("of roots that stand a mild winter comes with spring", () => {
    const carrots = last("carrot", { start: "2027-09-20", up: "2027-09-27" });
    expect(windows(carrots ? [carrots] : [])[0]).toMatch(/^last 03-\d\d 04-/);
  });
});
