import { describe, expect, test } from "vitest";
import { overlapDoubts } from "../../../src/engine/doubts/crowding.ts";
import { ALONE, planOf, QUARRY } from "../../gardens.ts";
import { GARDENS } from "../../views/pictures/drawn.ts";
import { bedOf, grownIn } from "../beds/gardens.ts";

const told = (...texts: readonly string[]) =>
  overlapDoubts(
    texts.map((text) => planOf(text)),
    grownIn(...texts),
  );

describe("plantings that share a bed", () => {
  test("are doubted where they stand at the same time and need more than its width", () => {
    const [doubt, ...more] = told(bedOf(["carrot: 10 rows", "parsnip: 6 rows"]));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ code: "bed-crowded", weight: "doubt", at: { line: 21 } });
    expect(doubt?.is).toMatch(
      /^parsnip and carrot share Long bed about \d+ \w+ and need about [\d½.]+ ft of its 4 ft across$/,
    );
    expect(doubt?.shouldBe).toMatch(
      /^Give one of them less or another bed, or wait with parsnip till about \d+ \w+$/,
    );
  });

  test("are good practice where there is room, and where quick rows go between slow ones", () => {
    expect(told(bedOf(["carrot: 3 rows", "radish: 10 ft, between the carrot rows"]))).toEqual([]);
    expect(told(bedOf(["carrot: 11 rows", "radish: 2 rows"]))).toEqual([]);
    expect(told(QUARRY)).toEqual([]);
    expect(told(ALONE)).toEqual([]);
  });

  test("are not doubted where one follows the other, by its day or by its word", () => {
    const radish = "radish: 20 rows, sow 20 Apr";
    expect(told(bedOf([radish, "carrot: 11 rows, sow 10 May"]))).toHaveLength(1);
    expect(told(bedOf([radish, "carrot: 11 rows, sow 20 Jul"]))).toEqual([]);
    expect(told(bedOf(["pea: 6 rows", "spinach: 6 rows, after the peas"]))).toEqual([]);
  });

  test("are doubted across the turn of the year", () => {
    const garlic = bedOf(["garlic: 180 cloves, plant this October"], { year: 2026 });
    expect(told(garlic, bedOf(["carrot: 11 rows, sow 10 May"]))[0]).toMatchObject({
      at: { file: "plans/quarry-lane/2027.yaml" },
    });
    expect(told(garlic, bedOf(["carrot: 11 rows, after the garlic"]))).toEqual([]);
  });

  test("are doubted each once, and never for one that alone is too much", () => {
    const three = told(bedOf(["carrot: 9 rows", "parsnip: 6 rows", "beet: 5 rows"]));
    expect(new Set(three.map(({ at }) => at.line)).size).toBe(three.length);
    expect(three.length).toBeGreaterThan(0);
    expect(told(bedOf(["carrot: 30 rows", "beet: 1 rows"]))).toEqual([]);
    for (const text of Object.values(GARDENS)) expect(() => told(text)).not.toThrow();
  });

  test("are doubted on the first day on which there is no room, not on a later one", () => {
    const [doubt, ...more] = told(bedOf(["carrot: 10 rows", "parsnip: 6 rows, sow 1 May"]));
    const [later] = told(bedOf(["carrot: 10 rows", "parsnip: 6 rows, sow 20 May"]));
    expect(more).toEqual([]);
    expect(doubt?.is).toContain(" about 7 June ");
    expect(later?.is).toContain(" about 7 June ");
  });

  test("are more than bags hold without a width", () => {
    const is = "6 grow bags, 16 in across, 14 in high";
    const [doubt] = told(bedOf(["potato: 20 plants", "carrot: 200 plants"], { is }));
    expect(doubt?.is).toContain("more bags than there are");
  });
});
