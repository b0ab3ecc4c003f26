import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { frostTonight } from "../../../src/engine/beds/frost-tonight.ts";
import { plantingsIn } from "../../../src/engine/year.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { sketchOf } from "../../views/pictures/drawn.ts";

const spansOf = (text: string, key: string) =>
  plantingsIn(sketchOf(text).year)
    .find(({ planting }) => planting.key === `2027/${key}`)
    ?.covers.map(({ thing, from, to }) => [thing, isoOf(from), to === null ? null : isoOf(to)]);
const under = QUARRY.replace("from seed indoors", "from seed indoors, under fabric");

describe("covers over a planting", () => {
  test("lie from the day they are put on, on the days the schedule has", () => {
    const [span] = spansOf(under, "tomato") ?? [];
    expect(span?.slice(0, 2)).toEqual(["fabric", expect.stringMatching(/^2027-0[56]/)]);
    expect(spansOf(QUARRY, "tomato")).toEqual([]);
  });

  test("lie as the diary says, and not at all where they are left out", () => {
    const done = `${under}diary:\n  - 12 June: fabric over the tomatoes\n  - 20 June: fabric off the tomatoes\n`;
    expect(spansOf(done, "tomato")?.[0]).toEqual(["fabric", "2027-06-12", "2027-06-20"]);
    const none = QUARRY.replace(
      "from seed indoors",
      "from seed indoors, under fabric, without covering",
    );
    expect(spansOf(none, "tomato")).toEqual([]);
  });

  test("are trusted on a cold night only while they lie there", () => {
    const done = `${under}diary:\n  - 12 June: fabric over the tomatoes\n  - 20 June: fabric off the tomatoes\n`;
    const need = (iso: string) =>
      frostTonight(sketchOf(done).year, isoDay(iso), celsius(35))
        .beds.flatMap(({ plants }) => plants)
        .find(({ planting }) => planting === "2027/tomato")?.need;
    expect(need("2027-06-15")).toEqual({ kind: "leave", why: "under fabric" });
    expect(need("2027-06-21")).toMatchObject({ kind: "cover", over: false });
  });

  test("are not trusted where jobs stay open until somebody says that they are done", () => {
    expect(spansOf(`assume: open\n${under}`, "tomato")).toEqual([]);
  });
});
