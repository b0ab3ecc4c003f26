import { describe, expect, test } from "vitest";
import { taskCards } from "../../src/views/cards.ts";
import { isoDay, QUARRY, tellOf } from "../gardens.ts";

const { year } = tellOf(`${QUARRY}diary:\n  - 12 May: beets sown by Oda\n`, { on: "2027-05-20" });
const cards = taskCards(year);
const cardOf = (id: string) => cards.find((card) => card.id === id);

describe("a task's card", () => {
  test("stands for each task, in the year's order", () => {
    expect(cards.map(({ id }) => id)).toEqual(year.scheduled.map(({ task }) => task.id));
  });

  test("has all that its page shows, in words", () => {
    const thin = cardOf("2027/beet/thin/1");
    expect(thin).toMatchObject({ title: "Thin beets", fullTitle: "Thin beets, Root bed" });
    expect(thin).toMatchObject({ bed: "Root bed", needs: [] });
    expect(thin?.text).toMatch(/^Thin to .*\n(?:.*\n)*Fine till /);
    expect([5, 10, 15, 20, 30, 45, 60]).toContain(thin?.minutes);
    expect(thin?.people).toHaveLength(1);
    expect(thin?.why.length).toBeGreaterThan(0);
    expect(thin?.answers.length).toBeGreaterThan(1);
    expect(thin?.earliest).toBeLessThanOrEqual(thin?.latest ?? 0);
  });

  test("says when it was done and by whom, by name", () => {
    expect(cardOf("2027/beet/sow-outdoors/1")?.done).toEqual({
      day: isoDay("2027-05-12"),
      by: "Oda",
    });
  });

  test("ranks as one walks: under a roof, bed by bed, then what stands in no bed", () => {
    const rank = (id: string) => cardOf(id)?.bedRank ?? Number.NaN;
    expect(rank("2027/tomato/sow-indoors/1")).toBeLessThan(rank("2027/beet/thin/1"));
    expect(rank("2027/beet/thin/1")).toBeLessThan(rank("2027/tomato/set-out/1"));
  });

  test("is small plain JSON", () => {
    expect(JSON.parse(JSON.stringify(cards))).toEqual(cards);
    expect(Math.max(...cards.map((card) => JSON.stringify(card).length))).toBeLessThan(2500);
  });
});
