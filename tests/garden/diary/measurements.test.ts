import { expect, it } from "vitest";
import { measurementIn } from "../../../src/garden/diary/measurements.ts";
import { on, PLAN } from "../plan/canonical.ts";

const line = { day: on(6, 1), text: "", at: { file: "f", line: 1, column: 1 } };
const measured = (text: string) => {
  const found = measurementIn(line, text, [PLAN]);
  if (found?.kind !== "measured") return found?.kind === "note" ? found.why : found;
  return [found.what, found.bed, Math.round(found.value.si * 10) / 10];
};

it("soil, nights, rain and heights are read with their units", () => {
  expect(measured("soil in south bed 58 °f")).toEqual(["soil", "south-bed", 14.4]);
  expect(measured("soil 10 c")).toEqual(["soil", null, 10]);
  expect(measured("low of 30 f last night")).toEqual(["low", null, -1.1]);
  expect(measured("rain 1 in")).toEqual(["rain", null, 2.5]);
  expect(measured("beets are 3 in tall")).toEqual(["height", null, 7.6]);
});

it("a bed or planting that is not there is the note's reason, and other words are nothing measured", () => {
  expect(measured("soil in north bed 58 f")).toBe("no bed is called north bed");
  expect(measured("moonflower 3 in tall")).toBe("no planting is called moonflower");
  expect(measured("thinned the beets")).toBeNull();
});
