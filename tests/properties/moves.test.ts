import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Schedule } from "../../src/app/build.ts";
import { PRACTICES } from "../../src/engine/practices/all.ts";
import { readPlan } from "../../src/garden/plan/read.ts";
import { drawnForMeans, samples } from "../depth.ts";
import { gardenOf, QUARRY } from "../gardens.ts";
import { once } from "../once.ts";
import { dawn, toldAt } from "./feeds.ts";
import { anyTrade } from "./trade.ts";

const PEOPLE = `people:
  Imre: { gardens: Wed 18-19 and Sat 9-12, home: weekdays from 17:30 and weekends }
  Oda: { gardens: Sun 10-12, home: every day but Tue }
`;

const GARDENS: readonly (readonly [string, string])[] = [
  ["the canonical garden", QUARRY],
  [
    "the demo garden",
    readFileSync(new URL("../../plans/quarry-lane/2027.yaml", import.meta.url), "utf8"),
  ],
  ["a garden of thirty crops", `${anyTrade(drawnForMeans(5), 30)}${PEOPLE}`],
];

/** Lines of a text that are a crop's phrase in a bed. */
const cropLines = (text: string) =>
  text.split("\n").filter((line) => /^ {6}- [a-z ]+(?::|$)/.test(line));

/** Every text that differs by one planting: gone, told otherwise, or one more beside it. */
function edits(text: string): readonly string[] {
  return cropLines(text).flatMap((line) => {
    const [, crop] = /^ {6}- ([a-z ]+)/.exec(line) ?? [];
    const otherwise = /\d+ (?:plants|rows?|ft|cloves)/.test(line)
      ? line.replace(/(\d+) (plants|rows?|ft|cloves)/, (_, n, unit) => `${Number(n) + 1} ${unit}`)
      : line;
    return [
      text.replace(`${line}\n`, ""),
      text.replace(line, otherwise),
      text.replace(line, `${line}\n      - name: another ${crop}\n        crop: ${crop}`),
    ].filter((edited) => edited !== text && isSound(edited));
  });
}

/** The edits that are tried: of many a third, and in the usual depth every third of those. */
function chosen(all: readonly string[]): readonly string[] {
  const looked = all.filter((_, i) => all.length < 60 || i % 3 === 0);
  return looked.filter((_, i) => i % samples(1, 3) === 0);
}

/** Whether a text is a plan at all: a line taken out of a phrase that runs on over two is none. */
const isSound = (text: string) =>
  readPlan(text, { garden: "quarry-lane", file: "2027.yaml" }, PRACTICES).plan !== null;

/** How many of the tasks that both have stand on another day, and of how many. */
function movedBetween(
  before: Schedule,
  after: Schedule,
): { readonly moved: number; readonly of: number } {
  const was = new Map(before.scheduled.map(({ task, day }) => [task.id, day]));
  const both = after.scheduled.filter(({ task }) => was.has(task.id));
  return {
    moved: both.filter(({ task, day }) => was.get(task.id) !== day).length,
    of: both.length,
  };
}

const now = dawn("2027-03-01");

describe.each(GARDENS)("a single edit of %s", (_, text) => {
  const all = once(() => {
    const before = toldAt(gardenOf(text), now);
    return chosen(edits(text)).map((edited) =>
      movedBetween(before, toldAt(gardenOf(edited), now, before.publishedState)),
    );
  });

  test("moves no other task, in the middle of all edits", () => {
    expect(all().length).toBeGreaterThan(samples(10, 4));
    const moved = all()
      .map(({ moved }) => moved)
      .sort((a, b) => a - b);
    expect(moved[Math.floor(moved.length / 2)]).toBe(0);
  });

  test("moves one task in ten at the most", () => {
    const worst = Math.max(...all().map(({ moved, of }) => moved / of));
    expect(worst).toBeLessThanOrEqual(0.1);
  });
});
