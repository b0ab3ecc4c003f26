import { expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { ONE_IN_TEN } from "../../../src/engine/climate/normal.ts";
import { soilIn } from "../../../src/views/pictures/warmth.ts";
import { QUARRY } from "../../gardens.ts";
import { on, sketchOf } from "./drawn.ts";

const drawn = sketchOf(QUARRY);
const { plan } = drawn;
const days = Array.from({ length: 73 }, (_, i) => plus(on("2027-01-01"), i * 5));

test("cool lies below usual below warm, each 1 year in 10 away", () => {
  const soil = soilIn(drawn, null);
  for (const day of days) {
    const { coolC, usualC, warmC } = soil(day);
    expect(coolC).toBeLessThanOrEqual(usualC);
    expect(warmC).toBeGreaterThanOrEqual(usualC);
  }
  const { usualC, warmC } = soil(on("2027-07-10"));
  const spreadK = climateOf(plan, []).spreadK(on("2027-07-10"));
  expect(warmC - usualC).toBeCloseTo(ONE_IN_TEN * spreadK, 6);
});

test("film warms, and the usual soil knows nothing of the diary", () => {
  const film = plan.beds.find((bed) => bed.warmed) ?? null;
  expect(soilIn(drawn, film)(on("2027-05-01")).usualC).toBeGreaterThan(
    soilIn(drawn, null)(on("2027-05-01")).usualC,
  );
  const {
    year: { observations: facts },
  } = sketchOf(`${QUARRY}diary:\n  - 1 May: soil 70 °F\n`);
  expect(climateOf(plan, facts).soilC(on("2027-05-01"), null)).toBeCloseTo(21.1, 0);
  expect(soilIn(drawn, null)(on("2027-05-01")).usualC).toBeLessThan(12);
});
