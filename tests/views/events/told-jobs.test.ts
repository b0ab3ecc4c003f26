import { describe, expect, test } from "vitest";
import { caution, how, sign, why } from "../../../src/engine/practices/sentence.ts";
import { voiceOf } from "../../../src/views/events/sentences.ts";
import { jobTexts, toldJobs } from "../../../src/views/events/told-jobs.ts";
import { placedOf, SATURDAY, windowOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const VOICE = voiceOf(PLAN, "household");
type Given = Parameters<typeof placedOf>[1];
const feed = (object: string, task: Given = {}, given = {}) =>
  placedOf(given, {
    id: object,
    practice: "feed",
    title: { verb: "Feed", object, where: "bed" },
    say: [how("A handful round each plant.")],
    ...task,
  });
const names = (jobs: readonly ReturnType<typeof feed>[]) =>
  toldJobs(jobs, VOICE).map((group) => group.map(({ task }) => task.title.object).join("+"));
const textOf = (jobs: readonly ReturnType<typeof feed>[], longest = 900) =>
  jobTexts(toldJobs(jobs, VOICE), { plan: PLAN, voice: VOICE, longest });

describe("jobs of a visit that are told once", () => {
  test("are of one verb and done in one way, in whichever beds", () => {
    expect(names([feed("kale"), feed("leeks", { bed: "salad-bed" })])).toEqual(["kale+leeks"]);
    expect(
      names([
        feed("kale"),
        feed("leeks", { practice: "thin", title: { verb: "Thin", object: "leeks", where: "bed" } }),
      ]),
    ).toEqual(["kale", "leeks"]);
    expect(names([feed("kale"), feed("leeks", { say: [how("Two handfuls.")] })])).toEqual([
      "kale",
      "leeks",
    ]);
  });

  test("may be done in part alike, in one bed", () => {
    const ways = [how("A handful round each plant."), how("Twice.")];
    expect(names([feed("kale"), feed("leeks", { say: ways })])).toEqual(["kale+leeks"]);
    expect(names([feed("kale"), feed("leeks", { say: ways, bed: "salad-bed" })])).toEqual([
      "kale",
      "leeks",
    ]);
  });

  test("begin nothing in another bed, since that has its turn there", () => {
    const sets = { act: "start", planting: "2027/kale", sowing: 1 } as const;
    expect(names([feed("kale", { sets }), feed("leeks", { sets, bed: "salad-bed" })])).toEqual([
      "kale",
      "leeks",
    ]);
  });

  test("are things to get, whatever they are", () => {
    const get = (object: string, thing: string) =>
      feed(object, { practice: "things to have", say: [how(thing)] });
    expect(names([get("kale", "A net."), feed("beets"), get("leeks", "A dibber.")])).toEqual([
      "kale+leeks",
      "beets",
    ]);
  });

  test("are never open and done", () => {
    const done = { day: SATURDAY, by: null };
    expect(names([feed("kale"), feed("leeks", {}, { done })])).toEqual(["kale", "leeks"]);
  });

  test("stand where the first of them is, covers where the last is", () => {
    const net = (object: string, bed: string) =>
      feed(object, { bed, practice: "cover", title: { verb: "Net over", object, where: "bed" } });
    const jobs = [net("kale", "root-bed"), feed("beets"), net("lettuce", "salad-bed")];
    expect(names(jobs)).toEqual(["beets", "kale+lettuce"]);
  });
});

describe("what is told of them", () => {
  test("is how once, and each one's own last good day", () => {
    const later = { window: windowOf(7, 14) };
    expect(textOf([feed("kale"), feed("leeks", later), feed("beets")])).toEqual([
      "60 min: Feed kale, leeks and beets, Root bed.\nA handful round each plant. Kale and beets: fine till Saturday 15 May. Leeks: fine till Saturday 22 May.",
    ]);
  });

  test("is each one's own way with its name, and what they share below", () => {
    const own = (object: string, many: string) =>
      feed(object, { say: [how(`About ${many}.`), how("Water it in.")] });
    expect(textOf([own("kale", "a pint"), own("leeks", "a quart")])[0]).toContain(
      "\nKale: about a pint. Leeks: about a quart. Water it in. Fine till",
    );
  });

  test("is in hours where it takes more than one", () => {
    const long = (object: string, minutes: number) => feed(object, { minutes });
    const head = (...jobs: ReturnType<typeof feed>[]) => textOf(jobs)[0]?.split(":")[0];
    expect([
      head(long("a", 30)),
      head(long("a", 45), long("b", 30)),
      head(long("a", 60), long("b", 60)),
    ]).toEqual(["30 min", "1½ hours", "2 hours"]);
  });

  test("leaves room that one does not need to the others, the weightiest first", () => {
    const say = [
      how("First."),
      sign("It is tall."),
      why("Up on time."),
      caution("Wet bags are heavy."),
    ];
    const heavy = feed("kale", { harm: "tonight", say });
    const light = feed("leeks", { say: [how("Slowly ".repeat(12).trim().concat("."))] });
    const [kale, leeks] = textOf([light, heavy], 220).toReversed();
    expect(kale).toContain("First. ");
    expect(kale).toContain("Wet bags are heavy.");
    expect(leeks).toMatch(/^20 min: Feed leeks, Root bed\.\nSlowly/);
    expect(textOf([light, heavy], 130)).toEqual([
      "20 min: Feed leeks, Root bed.",
      expect.stringContaining("First."),
    ]);
  });

  test("never goes on with how where a sentence of it is left out", () => {
    const say = [how("One."), how("Two is long. ".repeat(20).trim()), how("Three.")];
    expect(textOf([feed("kale", { say })], 120)[0]).toMatch(/\nOne\. Fine till [^.]+\.$/);
  });
});
