import { describe, expect, test } from "vitest";
import { FIRST_FROST } from "../../../src/engine/practices/first-frost.ts";
import { endsWithFrost, frostAheadTasks } from "../../../src/engine/practices/frost-ahead.ts";
import { ALONE, QUARRY, tellOf } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, titles, told, windows } from "./told.ts";

const warnings = (text: string) =>
  tellOf(text, { on: "2027-01-01" })
    .scheduled.filter(({ task }) => task.id === "2027/garden/first-frost/warning")
    .map(({ task }) => task);

const eventOf = (text: string) =>
  tellOf(text, { on: "2027-01-01" }).events.find(({ kind, categories }) => {
    return kind === "warning" && categories.includes("first frost");
  });

/** The canonical garden with more to save and more to leave; frost does not come before it is ready. */
const FULL = ALONE.replace(
  "      - tomato: 6 plants, from seed indoors\n",
  "      - tomato: 6 plants, from seed indoors\n      - name: hoop tomatoes\n        crop: tomato\n        plants: 3\n        from: bought\n",
).replace(
  "      - beet: 2 rows\n",
  "      - beet: 2 rows\n      - name: late turnips\n        crop: turnip\n        rows: 1\n        sow: 10 Aug\n",
);

const many = (count: number) =>
  ALONE.replace(
    "      - tomato: 6 plants, from seed indoors\n",
    Array.from(
      { length: count },
      (_, i) =>
        `      - name: heirloom tomatoes ${i + 1}\n        crop: tomato\n        plants: 3\n`,
    ).join(""),
  );

describe("the warning of the first frost", () => {
  test("is one for the garden, on the day by which 1 autumn in 10 has had it", () => {
    expect(windows(warnings(FULL))).toEqual(["warning 09-17 09-17 09-17"]);
    expect(titles(warnings(FULL))).toEqual(["Be ready for the first frost"]);
    expect(warnings(FULL)[0]?.rhythm).toBe("warning");
  });

  test("names what is tender by bed in walking order, and what may stay", () => {
    const text = said(warnings(FULL)[0]);
    expect(text).toContain("pick before it: tomatoes, hoop tomatoes (South bed).");
    expect(text).toMatch(/Leave .*late turnips.* \(Root bed\).*: a light frost will do no damage/);
    expect(text).toContain("makes roots and cabbages sweeter");
    expect(text).not.toMatch(/Leave [^:]*tomatoes/);
    expect(text).not.toContain("garlic");
  });

  test("says the odds, the usual day and that covers win two weeks", () => {
    const text = said(warnings(FULL)[0]);
    for (const word of ["1 autumn in 10", "2 Oct", "two more mild weeks"])
      expect(text).toContain(word);
    expect(told(warnings(FULL)[0])).toContain("2 Oct");
  });

  test("leaves out what is out of the ground by that very day", () => {
    const leaving = (end: string) => {
      const out = { start: "2027-04-09", "set out": "2027-06-01" };
      const tomato = growingOf(ALONE, "tomato", { acts: out });
      const beet = growingOf(ALONE, "beet", {
        acts: { start: "2027-05-03", up: "2027-05-20", end },
      });
      return said(frostAheadTasks({ ...beet, contexts: [tomato, beet] })[0]).includes(
        "Leave beets",
      );
    };
    expect(["2027-09-16", "2027-09-17", "2027-09-18"].map(leaving)).toEqual([false, false, true]);
  });

  test("names as much as its room holds, to the letter", () => {
    // ", " between the names and " (South bed)" after them are fourteen of the hundred and twenty letters.
    const two = (letters: number) =>
      ALONE.replace(
        "      - tomato: 6 plants, from seed indoors\n",
        ["a".repeat(53), "b".repeat(letters - 53)]
          .map((name) => `      - name: ${name}\n        crop: tomato\n        plants: 3\n`)
          .join(""),
      );
    expect(said(warnings(two(106))[0])).toMatch(/a, b+ \(South bed\)\./);
    expect(said(warnings(two(107))[0])).toMatch(/a \(South bed\) and 1 more\./);
  });

  test.each([1, 3, 8, 20])("is short enough for %i plantings to save", (count) => {
    const event = eventOf(many(count));
    expect(event?.text.length).toBeLessThanOrEqual(450);
    expect(event?.text).toContain("2 Oct");
    expect(/ and \d+ more\./.test(event?.text ?? "")).toBe(count > 4);
  });

  test("leaves out a planting that drops it, and is not told where nothing is tender", () => {
    const drop = ALONE.replace("seed indoors", "seed indoors, without first frost");
    expect(warnings(drop)).toEqual([]);
    expect(warnings(ALONE.replace(/ {2}South bed:\n(?: {4}.*\n)+/, ""))).toEqual([]);
  });

  test("goes by the name of the practice that plantings drop", () => {
    expect(FIRST_FROST.name).toBe("first frost");
  });
});

const tomatoes = (given: Given = {}) =>
  growingOf(QUARRY, "tomato", { acts: { "set out": "2027-05-21" }, ...given });

test("frost ends what is tender and out before it, and nothing else", () => {
  expect(endsWithFrost(tomatoes())).toBe(true);
  expect(endsWithFrost(tomatoes({ acts: { "set out": "2027-10-05" } }))).toBe(false);
  expect(endsWithFrost(growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } }))).toBe(false);
});
