import { describe, expect, test } from "vitest";
import { roomIn } from "../../src/beds/room.ts";
import { roomTold } from "../../src/words/room.ts";
import { QUARRY } from "../gardens.ts";
import { on, sketchOf } from "../pictures/drawn.ts";

const season = sketchOf(QUARRY);
const bed = season.plans[0]?.beds.find(({ key }) => key === "root-bed");
if (!bed) throw new Error("the canonical garden has a root bed");
const told = (day: string) => roomTold(roomIn(season, bed, on(day)), "us");
const section = (day: string, name: string) =>
  told(day)
    .find((each) => each.name === name)
    ?.lines.join("\n") ?? "";

describe("a bed's room in words", () => {
  test("begins with the bed and the day, and what stands there", () => {
    expect(told("2027-06-20")[0]?.name).toBe("Root bed, 20 June");
    expect(told("2027-06-20")[0]?.lines[0]).toMatch(/^Here now: .*carrot.* till about/);
    expect(told("2027-01-10")[0]?.lines[0]).toBe("Nothing stands here.");
  });

  test("names days to expect, and too late in one line", () => {
    expect(section("2027-05-20", "Safe")).toMatch(/Beets from seed: ready about .* to /);
    expect(section("2027-09-25", "Too late").split("\n")).toHaveLength(1);
    expect(section("2027-04-10", "Not yet")).toMatch(/Beans from seed: from about/);
  });

  test("leaves out what has nothing to say", () => {
    for (const { lines } of told("2027-05-20")) expect(lines.length).toBeGreaterThan(0);
  });
});
