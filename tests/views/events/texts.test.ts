import { describe, expect, test } from "vitest";
import { caution, householdOnly, how, sign, why } from "../../../src/engine/practices/sentence.ts";
import { voiceOf } from "../../../src/views/events/sentences.ts";
import {
  LONGEST_TEXT,
  lastDayText,
  lastYearText,
  seasonText,
  textOf,
  textOfAll,
} from "../../../src/views/events/texts.ts";
import { inDays, placedOf, SATURDAY, windowOf } from "../../engine/schedule/given.ts";
import { ALONE, planOf, QUARRY, tellOf } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const HOUSEHOLD = voiceOf(PLAN, "household");
const READER = voiceOf(PLAN, "reader");
const SAY = [
  how("To one every three inches."),
  sign("Two leaves stand."),
  why("Up on ", { day: inDays(-20) }, "."),
  caution("Mind the roots."),
];

describe("how the season stands", () => {
  test("is told where it is three days off the usual one", () => {
    expect(seasonText(placedOf({ usual: inDays(-3) }))).toBe("3 days later than usual.");
    expect(seasonText(placedOf({ usual: inDays(9) }))).toBe("9 days earlier than usual.");
  });

  test("is not worth saying nearer than that", () => {
    expect(seasonText(placedOf({ usual: inDays(2) }))).toBe("");
  });

  test("is not told without a usual day, nor of what is done or fixed", () => {
    expect(seasonText(placedOf())).toBe("");
    expect(seasonText(placedOf({ usual: inDays(9), done: { day: SATURDAY, by: null } }))).toBe("");
    expect(seasonText(placedOf({ usual: inDays(9) }, { certainty: "fixed" }))).toBe("");
  });
});

describe("the last good day", () => {
  test("is told with its weekday", () => {
    expect(lastDayText(placedOf())).toBe("Fine till Saturday 15 May.");
  });

  test("that is a year away has its year", () => {
    expect(lastDayText(placedOf({}, { window: windowOf(7, 374) }))).toMatch(
      /^Fine till \d+ \w+ 2028\.$/,
    );
    expect(lastDayText(placedOf({}, { window: windowOf(7, 100) }))).not.toContain("20");
  });

  test("that is today is pressed only where the row would be lost tonight", () => {
    const tight = { window: windowOf(7, 0) };
    expect(lastDayText(placedOf({}, { ...tight, harm: "tonight" }))).toBe(
      "Don't leave it a day longer.",
    );
    expect(lastDayText(placedOf({}, tight))).toBe("");
  });

  test("is none for warnings, for rungs and for what is done", () => {
    expect(lastDayText(placedOf({}, { rhythm: "warning" }))).toBe("");
    expect(lastDayText(placedOf({}, { rhythm: "timed" }))).toBe("");
    expect(lastDayText(placedOf({ done: { day: SATURDAY, by: null } }))).toBe("");
  });
});

describe("a task's text", () => {
  test("says how, right when, why now, till when, and the caution, a line each", () => {
    expect(textOf(placedOf({ usual: inDays(-9) }, { say: SAY }), HOUSEHOLD).split("\n")).toEqual([
      "To one every three inches.",
      "Right when: two leaves stand.",
      "Up on 18 Apr. 9 days later than usual.",
      "Fine till Saturday 15 May.",
      "Mind the roots.",
    ]);
  });

  test("begins with when it was done, and by whom for the household alone", () => {
    const done = placedOf({ done: { day: SATURDAY, by: "oda" } });
    expect(textOf(done, HOUSEHOLD)).toMatch(/^Done 8 May, Oda\.\n/);
    expect(textOf(done, READER)).toMatch(/^Done 8 May\.\n/);
    expect(textOf(done, HOUSEHOLD).split("\n")).toHaveLength(2);
  });

  test("adds what placing had to say, for those who may read it", () => {
    const note = householdOnly(why("Moved, ", { person: "oda" }, " is away."));
    expect(textOf(placedOf({ note }), HOUSEHOLD)).toMatch(/Moved, Oda is away\./);
    expect(textOf(placedOf({ note }), READER)).not.toMatch(/away/);
  });

  test("drops whole lines from the third on where it grows too long, the caution last", () => {
    const long = `${"Go on and on. ".repeat(14).trim()}`;
    const text = textOf(
      placedOf({}, { say: [how(long), sign(long), why(long), caution("Mind the roots.")] }),
      HOUSEHOLD,
    );
    expect(text.length).toBeLessThanOrEqual(LONGEST_TEXT);
    expect(text).toMatch(/Mind the roots\.$/);
    expect(text).toMatch(/^Go on and on/);
  });

  test("is cut between words where one line alone is too long", () => {
    const text = textOf(placedOf({}, { say: [how("word ".repeat(200))] }), HOUSEHOLD);
    expect(text.length).toBeLessThanOrEqual(LONGEST_TEXT);
    expect(text).toMatch(/ word…$/);
  });
});

describe("the text of like tasks together", () => {
  const of = (id: string, object: string, said: string, given = {}) =>
    placedOf({}, { id, title: { verb: "Thin", object, where: "bed" }, say: [how(said)], ...given });

  test("of one is its own", () => {
    const one = placedOf({}, { say: SAY });
    expect(textOfAll([one], PLAN, HOUSEHOLD)).toBe(textOf(one, HOUSEHOLD));
  });

  test("done alike says how once, and the earliest last good day", () => {
    const both = [
      of("a", "beets", "Pull them."),
      of("b", "carrots", "Pull them.", { window: windowOf(7, 3) }),
    ];
    expect(textOfAll(both, PLAN, HOUSEHOLD).split("\n")).toEqual([
      "Beets, Root bed; Carrots, Root bed.",
      "Pull them.",
      "Fine till Tuesday 11 May.",
    ]);
  });

  test("done each in its own way has a line each", () => {
    const both = [of("a", "beets", "Pull them."), of("b", "carrots", "Water first.")];
    expect(textOfAll(both, PLAN, HOUSEHOLD).split("\n")).toEqual([
      "Beets, Root bed: Pull them.",
      "Carrots, Root bed: Water first.",
      "Fine till Saturday 15 May.",
    ]);
  });

  test("has each its own last good day where those differ", () => {
    const both = [
      of("a", "beets", "Pull them."),
      of("b", "carrots", "Water first.", { window: windowOf(7, 3) }),
    ];
    expect(textOfAll(both, PLAN, HOUSEHOLD).split("\n")).toEqual([
      "Beets, Root bed: Pull them. Fine till Saturday 15 May.",
      "Carrots, Root bed: Water first. Fine till Tuesday 11 May.",
    ]);
  });

  test("says once at the end what all have alike", () => {
    const all = ["beets", "carrots"].map((object, i) =>
      of(object, object, "", { say: [how(`About ${i} seeds.`), how("See what is left.")] }),
    );
    expect(textOfAll(all, PLAN, HOUSEHOLD).split("\n")).toEqual([
      "Beets, Root bed: About 0 seeds.",
      "Carrots, Root bed: About 1 seeds.",
      "See what is left. Fine till Saturday 15 May.",
    ]);
  });

  test("leaves out what comes second of each rather than one of them", () => {
    const long =
      "Keep it damp every day until it is up, and sow again where nothing shows by then. ";
    const three = ["beets", "carrots", "lettuce"].map((object, i) =>
      of(object, object, "", { say: [how(`Sow ${i} cm deep.`), how(`${i}: ${long.repeat(2)}`)] }),
    );
    expect(textOfAll(three, PLAN, HOUSEHOLD).split("\n")).toEqual([
      "Beets, Root bed: Sow 0 cm deep.",
      "Carrots, Root bed: Sow 1 cm deep.",
      "Lettuce, Root bed: Sow 2 cm deep.",
      "Fine till Saturday 15 May.",
    ]);
  });

  test("says the last good day once for a dozen of them", () => {
    const many = Array.from({ length: 12 }, (_, i) => of(`${i}`, "beets", `About ${i} seeds.`));
    const lines = textOfAll(many, PLAN, HOUSEHOLD).split("\n");
    expect(lines).toHaveLength(13);
    expect(lines[11]).toBe("Beets, Root bed: About 11 seeds.");
    expect(lines[12]).toBe("Fine till Saturday 15 May.");
  });

  test("counts those it has no room for", () => {
    const many = Array.from({ length: 9 }, (_, i) => of(`${i}`, "beets", `${i} `.repeat(40)));
    const text = textOfAll(many, PLAN, HOUSEHOLD);
    expect(text).toMatch(/\nAnd \d more\.\nFine till Saturday 15 May\.$/);
    expect(text.length).toBeLessThanOrEqual(LONGEST_TEXT);
  });
});

describe("last year", () => {
  test("is told of a job that was written down then, and not of what is done", () => {
    expect(lastYearText(placedOf({ lastYear: inDays(-360) }))).toBe("Last year: 13 May.");
    expect(lastYearText(placedOf())).toBe("");
    const done = { day: inDays(0), by: null };
    expect(lastYearText(placedOf({ lastYear: inDays(-360), done }))).toBe("");
  });

  test("comes from the earlier file's diary, by the planting's name", () => {
    const before = ALONE.replace("year: 2027", "year: 2026");
    const { events } = tellOf([`${before}diary:\n  - 11 Jun: beets thinned\n`, ALONE], {
      on: "2027-03-01",
    });
    const thin = events.find(({ tasks }) => tasks.includes("2027/beet/thin/1"));
    expect(thin?.text).toContain("Last year: 11 June.");
    const others = events.filter(({ tasks }) => !tasks.includes("2027/beet/thin/1"));
    expect(others.length).toBeGreaterThan(20);
    expect(others.every(({ text }) => !text.includes("Last year"))).toBe(true);
  });
});
