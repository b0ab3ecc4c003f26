import { describe, expect, test } from "vitest";
import type { Life } from "../../../src/engine/beds/planting-record.ts";
import { plantingsIn } from "../../../src/engine/year.ts";
import { QUARRY } from "../../gardens.ts";
import { GARDENS, on, sketchOf } from "../../views/pictures/drawn.ts";

const lives = (text: string, crop: string): readonly Life[] =>
  plantingsIn(sketchOf(text).year).find(({ planting }) => planting.crop === crop)?.lives ?? [];

describe("a sowing's days", () => {
  test("come in order, whatever grows", () => {
    const all = [QUARRY, ...Object.values(GARDENS)].flatMap((text) =>
      plantingsIn(sketchOf(text).year).flatMap((each) => each.lives),
    );
    expect(all.length).toBeGreaterThan(70);
    for (const { starts, out, up, full, ends, gone } of all) {
      const inTurn = [starts, up, full, ends, gone];
      expect(inTurn).toEqual([...inTurn].sort((a, b) => a - b));
      expect(full).toBeGreaterThan(out ?? up);
      expect(gone).toBeGreaterThan(ends);
    }
  });

  test("are those of its tasks", () => {
    const { scheduled: placed } = sketchOf(QUARRY).year;
    const day = (id: string) => placed.find(({ task }) => task.id === id)?.day;
    const [beet] = lives(QUARRY, "beet");
    expect([beet?.starts, beet?.full]).toEqual([
      day("2027/beet/sow-outdoors/1"),
      day("2027/beet/harvest/1"),
    ]);
    const [tomato] = lives(QUARRY, "tomato");
    expect(tomato?.out).toBe(day("2027/tomato/set-out/1"));
  });

  test("are those of the diary where it has them", () => {
    const seen = `${QUARRY}diary:\n  - 2 May: carrots sown\n  - 24 May: carrots up\n`;
    const [carrot] = lives(seen, "carrot");
    expect([carrot?.starts, carrot?.up]).toEqual([on("2027-05-02"), on("2027-05-24")]);
  });
});

test("each sowing of a succession has its own, and an unknown crop none", () => {
  const starts = lives(QUARRY, "lettuce").map((life) => life.starts);
  expect(starts.length).toBe(3);
  expect(starts).toEqual([...starts].sort((a, b) => a - b));
  expect(lives(GARDENS["no beds, nobody, no latitude"] ?? "", "quince")).toEqual([]);
});

test("a planting's record says how it is called and how far apart it stands, and a sowing's from when it is in its bed", () => {
  const { seasons } = sketchOf(QUARRY).year;
  const record = (key: string) => seasons[0]?.plantings.find(({ planting }) => planting === key);
  expect(record("2027/beet")?.name).toBe("beets");
  const { apartCm = 0, rowCm = 0 } = record("2027/beet")?.spacing ?? {};
  expect(apartCm).toBeGreaterThan(4);
  expect(rowCm).toBeGreaterThan(apartCm);
  const [tomato] = record("2027/tomato")?.sowings ?? [];
  expect(tomato?.placed).toBe(tomato?.out);
  const [beet] = record("2027/beet")?.sowings ?? [];
  expect(beet?.placed).toBe(beet?.starts);
});
