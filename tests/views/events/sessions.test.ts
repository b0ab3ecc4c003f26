import { describe, expect, test } from "vitest";
import { caution, householdOnly, how, sign, why } from "../../../src/engine/practices/sentence.ts";
import { voiceOf } from "../../../src/views/events/sentences.ts";
import { inBedOrder, inHarmOrder, sessionText } from "../../../src/views/events/sessions.ts";
import { LONGEST_SESSION } from "../../../src/views/events/texts.ts";
import { inDays, placedOf, SATURDAY, windowOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const VOICE = voiceOf(PLAN, "household");
const job = (id: string, task: Parameters<typeof placedOf>[1] = {}, given = {}) =>
  placedOf(given, { id, ...task });
const ids = (jobs: readonly { readonly task: { readonly id: string } }[]) =>
  jobs.map((each) => each.task.id);
const lines = (...jobs: readonly ReturnType<typeof job>[]) =>
  sessionText(jobs, PLAN, { voice: VOICE }).split("\n");

describe("the order one walks", () => {
  test("is under a roof first, then bed by bed as the plan has them", () => {
    const jobs = [
      job("a", { bed: "garlic-bed" }),
      job("b", { bed: null }),
      job("c", { bed: "bags" }),
      job("d", { bed: "south-bed", indoors: true }),
    ];
    expect(ids(inBedOrder(jobs, PLAN))).toEqual(["d", "c", "a", "b"]);
  });

  test("is by id within a bed", () => {
    expect(ids(inBedOrder([job("b"), job("a")], PLAN))).toEqual(["a", "b"]);
  });

  test("has things to get before the beds, and a planting go in before its cover goes on", () => {
    const bed = "root-bed";
    const jobs = [
      job("2027/kale/cover/on", { bed, practice: "cover" }),
      job("2027/kale/set-out/1", { bed, practice: "set out" }),
      job("2027/leek/cover/off", { bed, practice: "cover" }),
      job("2027/leek/harvest/1", { bed, practice: "harvest" }),
      job("2027/pea/things-to-have/cover-on", { bed, practice: "things to have" }),
    ];
    expect(ids(inBedOrder(jobs, PLAN))).toEqual([
      "2027/pea/things-to-have/cover-on",
      "2027/kale/set-out/1",
      "2027/kale/cover/on",
      "2027/leek/cover/off",
      "2027/leek/harvest/1",
    ]);
  });

  test("puts what has most to lose first where that is asked", () => {
    const jobs = [
      job("a", { harm: "when you can" }),
      job("b", { harm: "tonight" }),
      job("c", { harm: "this week" }),
    ];
    expect(ids(inHarmOrder(jobs, PLAN))).toEqual(["b", "c", "a"]);
  });
});

describe("a session's text", () => {
  test("of one job alone is its own text, with its minutes and what to take", () => {
    expect(lines(job("a", { needs: ["a hoe"] }))).toEqual([
      "20 min. Take: a hoe.",
      "To one every three inches.",
      "Fine till Saturday 15 May.",
    ]);
  });

  test("has a line a job with its minutes, how, and till when", () => {
    expect(lines(job("a"), job("b", { minutes: 10 }))).toEqual([
      "20 min: Thin beets, Root bed. To one every three inches. Fine till Saturday 15 May.",
      "10 min: Thin beets, Root bed. To one every three inches. Fine till Saturday 15 May.",
      "Raining? All of it can wait till Saturday 15 May.",
    ]);
  });

  test("names like jobs in one line where a line each is too much", () => {
    const crops = Array.from({ length: 40 }, (_, i) => `crop number ${i}`);
    const orders = crops.map((object, i) =>
      job(`order-${i + 10}`, { title: { verb: "Order seed:", object, where: null }, minutes: 5 }),
    );
    const [first = ""] = lines(...orders);
    expect(first).toMatch(
      /^\d+ min: Order seed: crop number 0, crop number 1, .* and crop number 39\.$/,
    );
    expect(lines(...orders).join("\n")).not.toMatch(/And \d+ more/);
  });

  test("leaves out the sign and the reason first where there is little room", () => {
    const say = [how("Slowly. ".repeat(8).trim()), sign("It is tall."), why("Up on time.")];
    const few = lines(job("a", { say }), job("b", { say }));
    const many = lines(...Array.from({ length: 6 }, (_, i) => job(`job ${i}`, { say })));
    expect(few[0]).toMatch(/Slowly\. Right when: it is tall\. Up on time\. Fine till/);
    expect(many[0]).toMatch(/Slowly\..* Fine till/);
    expect(many[0]).not.toMatch(/Right when/);
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
      job(`job ${i}`, { say: [how("Slowly. ".repeat(30).trim())] }),
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
  const jobs = ["a", "b", "c", "d", "e"].map((id) => job(id));
  const told = (waiting: typeof jobs) => sessionText(jobs, PLAN, { voice: VOICE, waiting });
  expect(told(jobs.slice(3))).toMatch(
    /\nMore than the hours hold\. What can wait best: .+ and .+, the first till \w+ \d+ \w+\./,
  );
  expect(told(jobs.slice(1))).toContain(" and 1 more,");
  expect(told([])).not.toContain("More than");
});
