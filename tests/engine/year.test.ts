import { describe, expect, test } from "vitest";
import { frostTonight } from "../../src/engine/beds/frost-tonight.ts";
import { plantingsIn, seasonFor, type Year } from "../../src/engine/year.ts";
import { yearReport } from "../../src/views/paper/year.ts";
import { yearPage } from "../../src/views/paper/year-page.tsx";
import { drawPicture } from "../../src/views/pictures/picture.ts";
import { yearEvents } from "../../src/views/year-events.ts";
import { isoDay, QUARRY, tellOf } from "../gardens.ts";
import { LIVED } from "../views/paper/paper-year.ts";
import { firstPlan, GARDENS } from "../views/pictures/drawn.ts";

/** No weather is known. */
const NOTHING_AHEAD = { coldNights: [], hardDays: [], spells: [] };

const AWAY = LIVED.replace(
  "beds:\n",
  "away:\n  - everybody, 1 Aug to 8 Aug\n  - Oda, 1 to 9 Sep\nbeds:\n",
);
const { year } = tellOf(AWAY, { on: "2027-06-01" });
const planned = tellOf(QUARRY, { on: "2027-06-01" }).year;

/** Everything that is shown of a year, as one value. */
function shown(year: Year) {
  const plan = firstPlan(year);
  const today = isoDay("2027-06-10");
  return {
    events: yearEvents(year, NOTHING_AHEAD),
    frost: frostTonight(year, today, -1),
    pictures: (["frost", "soil", "season"] as const).map((subject) =>
      drawPicture(subject, { year, plan, today, form: "phone" }),
    ),
    lookedBack: yearPage(yearReport({ year, planned, plan, today })),
  };
}

describe("a year", () => {
  test("written as JSON and read back shows the same", () => {
    expect(shown(JSON.parse(JSON.stringify(year)))).toEqual(shown(year));
  });

  test("holds nothing that JSON does not, whatever grows in it", () => {
    for (const text of Object.values(GARDENS)) {
      const { year } = tellOf(text, { on: "2027-06-01" });
      expect(JSON.parse(JSON.stringify(year))).toStrictEqual(year);
      expect(structuredClone(year)).toStrictEqual(year);
    }
  });

  test("has a season for each plan and a record for each planting", () => {
    expect(year.seasons.map((season) => season.year)).toEqual([2027]);
    const plantings = plantingsIn(year);
    expect(plantings.map(({ planting }) => planting.key)).toEqual(
      firstPlan(year).plantings.map(({ key }) => key),
    );
    expect(plantings.every(({ lives }) => lives.length > 0)).toBe(true);
    expect(() => seasonFor(year, { year: 1999 })).toThrow("1999");
  });

  test("has each planting in the bed that the diary moved it to", () => {
    const moved = tellOf(`${QUARRY}diary:\n  - 3 Jun: moved the beets to Salad bed\n`, {
      on: "2027-06-10",
    }).year;
    const beet = plantingsIn(moved).find(({ planting }) => planting.crop === "beet");
    expect(beet?.planting.bed).toBe("salad-bed");
    expect(firstPlan(moved).plantings.find(({ crop }) => crop === "beet")?.bed).toBe("root-bed");
  });
});
