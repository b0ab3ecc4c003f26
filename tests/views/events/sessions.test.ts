import { describe, expect, test } from "vitest";
import { caution, householdOnly, how, sign, why } from "../../../src/engine/practices/sentence.ts";
import { voiceOf } from "../../../src/views/events/sentences.ts";
import { sessionText } from "../../../src/views/events/sessions.ts";
import { LONGEST_SESSION } from "../../../src/views/events/texts.ts";
import { inDays, placedOf, SATURDAY, windowOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const VOICE = voiceOf(PLAN, "household");
const job = (id: string, task: Parameters<typeof placedOf>[1] = {}, given = {}) =>
  placedOf(given, { id, ...task });
const lines = (...jobs: readonly ReturnType<typeof job>[]) =>
  sessionText(jobs, PLAN, { voice: VOICE }).split("\n");

describe("a session's text", () => {
  test("of one job alone is its own text, with its minutes and what to take", () => {
    expect(lines(job("a", { needs: ["a hoe"] }))).toEqual([
      "20 min. Take: a hoe.",
      "To one every three inches.",
      "Fine till Saturday 15 May.",
    ]);
  });

  test("has a paragraph for each job with its minutes, how, and till when", () => {
    const kale = { verb: "Feed", object: "kale", where: "bed" };
    expect(lines(job("a"), job("b", { minutes: 10, title: kale }))).toEqual([
      "20 min: Thin beets, Root bed.",
      "To one every three inches. Fine till Saturday 15 May.",
      "",
      "10 min: Feed kale, Root bed.",
      "To one every three inches. Fine till Saturday 15 May.",
      "",
      "Raining? All of it can wait till Saturday 15 May.",
    ]);
  });

  test("has what is done below what is open, without its how, and asks nothing for it", () => {
    const done = { day: SATURDAY, by: "oda" };
    const kale = { verb: "Feed", object: "kale", where: "bed" };
    const told = sessionText(
      [job("a", { needs: ["a hoe"], title: kale }, { done }), job("b", { minutes: 10 })],
      PLAN,
      { voice: VOICE },
    );
    expect(told.split("\n")).toEqual([
      "10 min: Thin beets, Root bed.",
      "To one every three inches. Fine till Saturday 15 May.",
      "",
      "✓ Feed kale, Root bed. Done 8 May, Oda.",
      "",
      "Raining? All of it can wait till Saturday 15 May.",
    ]);
    expect(sessionText([job("a", {}, { done })], PLAN, { voice: VOICE })).toBe(
      "Done 8 May, Oda.\nTo one every three inches.",
    );
  });

  test("has work under a roof last where the sun sets before", () => {
    const pot = { indoors: true, title: { verb: "Pot on", object: "tomatoes", where: null } };
    const heads = (dark: boolean) =>
      sessionText([job("a"), job("b", pot)], PLAN, { voice: VOICE, dark })
        .split("\n")
        .filter((line) => line.includes(" min: "));
    expect(heads(false)).toEqual(["20 min: Pot on tomatoes.", "20 min: Thin beets, Root bed."]);
    expect(heads(true)).toEqual(["20 min: Thin beets, Root bed.", "20 min: Pot on tomatoes."]);
  });

  test("leaves out the sign and the reason first where there is little room", () => {
    const say = (i: number) => [
      how(`Slowly ${i}. ${"Slowly. ".repeat(8).trim()}`),
      sign("It is tall, as tall as a hand is long or taller."),
      why("Up on time, as it was the year before this one."),
    ];
    const few = lines(job("a", { say: say(0) }), job("b", { say: say(1) }));
    const many = lines(...Array.from({ length: 6 }, (_, i) => job(`job ${i}`, { say: say(i) })));
    expect(few[1]).toMatch(/Slowly\. Right when: it is tall.* Up on time.* Fine till/);
    expect(many.join("\n").match(/Slowly \d\..* Fine till/g)).toHaveLength(6);
    expect(many.join("\n")).not.toMatch(/Up on time|Right when/);
  });

  test("begins with what to take, each thing once", () => {
    const jobs = [job("a", { needs: ["a hoe", "twine"] }), job("b", { needs: ["a hoe"] })];
    expect(lines(...jobs)[0]).toBe("Take: a hoe, twine.");
  });

  test("names the one job for half an hour where the whole takes longer", () => {
    const jobs = [
      job("a"),
      job("b", { harm: "tonight", title: { verb: "Cover", object: "basil", where: null } }),
    ];
    expect(lines(...jobs)).toContain("Only half an hour? Cover basil.");
  });

  test("says nothing of half an hour where that is enough", () => {
    const jobs = [job("a", { minutes: 10 }), job("b", { minutes: 15 })];
    expect(lines(...jobs).join("\n")).not.toMatch(/half an hour/);
  });

  test("sends one under a roof in rain where there is work", () => {
    const pot = { indoors: true, title: { verb: "Pot on", object: "tomatoes", where: null } };
    expect(lines(job("a"), job("b", pot))).toContain("Raining? Pot on tomatoes.");
  });

  test("says nothing of rain where nothing can wait", () => {
    expect(lines(job("a", { window: windowOf(7, 0) })).join("\n")).not.toMatch(/Raining/);
  });

  test("waits in rain no longer than the job that can wait least", () => {
    const jobs = [job("a"), job("b", { window: windowOf(3, 2) })];
    expect(lines(...jobs)).toContain("Raining? All of it can wait till Monday 10 May.");
  });

  test("tells cautions, and what placing had to say", () => {
    const note = householdOnly(why("Oda is away till ", { day: inDays(3) }, "."));
    const text = sessionText(
      [
        job("a", { say: [how("Lift."), caution("Wet bags are heavy.")] }, { note, day: SATURDAY }),
        job("b"),
      ],
      PLAN,
      { voice: VOICE },
    );
    expect(text).toMatch(/Wet bags are heavy\. Oda is away till 11 May\./);
  });

  test("drops sentences and keeps every job where there are many", () => {
    const many = Array.from({ length: 10 }, (_, i) =>
      job(`job ${i}`, { say: [how(`Slowly ${i}. ${"Slowly. ".repeat(30).trim()}`)] }),
    );
    const text = sessionText(many, PLAN, { voice: VOICE });
    expect(text.match(/20 min:/g)).toHaveLength(10);
    expect(text.length).toBeLessThanOrEqual(LONGEST_SESSION);
  });

  test("counts the jobs of a day that holds too many to name", () => {
    const many = Array.from({ length: 60 }, (_, i) =>
      job(`job ${i}`, {
        needs: [`thing ${i}`],
        title: { verb: `Do ${i} to`, object: "beets", where: "bed" },
      }),
    );
    const text = sessionText(many, PLAN, { voice: VOICE });
    expect(text.length).toBeLessThanOrEqual(LONGEST_SESSION);
    expect(text).toMatch(/\nAnd \d+ more\./);
    expect(text).toMatch(/Raining\? All of it/);
  });
});

test("what the hours do not hold is named, the least missed of it, and till when it may wait", () => {
  const jobs = ["a", "b", "c", "d", "e"].map((id) =>
    job(id, { title: { verb: `Thin ${id}`, object: "beets", where: "bed" } }),
  );
  const told = (waiting: typeof jobs) => sessionText(jobs, PLAN, { voice: VOICE, waiting });
  expect(told(jobs.slice(3))).toMatch(
    /\nMore than the hours hold\. What can wait best: .+ and .+, the first till \w+ \d+ \w+\./,
  );
  expect(told(jobs.slice(1))).toContain(" and 1 more,");
  expect(told([])).not.toContain("More than");
});
