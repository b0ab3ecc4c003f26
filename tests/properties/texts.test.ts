import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { verbWith } from "../../src/base/text/words.ts";
import { CROPS } from "../../src/crops/crops.ts";
import { sayPieces, type Voice } from "../../src/views/events/sentences.ts";
import { QUARRY, tellOf } from "../gardens.ts";
import { once } from "../once.ts";

const NAMES = ["cold", "maritime", "mediterranean", "southern", "very-short"] as const;
const textOf = (name: string) =>
  readFileSync(new URL(`../golden/gardens/${name}.yaml`, import.meta.url), "utf8");

/** The same garden by its frost dates alone. */
const withoutWeather = (text: string) => text.replace(/^ {2}weather:\n(?: {4}.*\n)+/m, "");

type Told = {
  readonly garden: string;
  readonly measures: "us" | "metric";
  readonly id: string;
  readonly part: string;
  readonly text: string;
  readonly verb?: string;
  readonly object?: string;
};

function toldBy(garden: string, text: string): readonly Told[] {
  const { scheduled } = tellOf(text, { on: "2027-01-02" });
  return (["us", "metric"] as const).flatMap((measures) => {
    const voice: Voice = { measures, audience: "household", nameOf: (key) => key };
    return scheduled.flatMap(({ task: { id, title, say, because } }) => {
      const told = (part: string, words: string): Told => ({
        garden,
        measures,
        id,
        part,
        text: words,
      });
      return [
        { ...told("title", verbWith(title.verb, title.object)), ...title },
        ...say.map(({ part, pieces }) => told(part, sayPieces(pieces, voice))),
        ...because.map((pieces) => told("because", sayPieces(pieces, voice))),
      ];
    });
  });
}

/** Every text of the five whole gardens, of the canonical one, and of one by its frost dates alone, in both measures. */
const texts = once(() => [
  ...NAMES.flatMap((name) => toldBy(name, textOf(name))),
  ...toldBy("quarry", QUARRY),
  ...toldBy("frost dates alone", withoutWeather(textOf("cold"))),
]);

const broken = (breaks: (told: Told) => boolean) => [
  ...new Set(
    texts()
      .filter(breaks)
      .map(({ garden, id, part, text }) => `${garden} ${id} ${part}: ${text}`),
  ),
];

/** What a reader sees of a task; `because` quotes tables by their own titles and figures. */
const seen = (breaks: (told: Told) => boolean) =>
  broken((told) => told.part !== "because" && breaks(told));

const plurals = CROPS.filter(({ one, many }) => one !== many).map(({ many }) => many);
const singulars = CROPS.filter(({ one, many }) => one === many).map(({ many }) => many);
const names = new RegExp(`\\b(?:${[...plurals, ...singulars].join("|")})\\b`, "i");
const agreeing = (subjects: readonly string[], verbs: string) =>
  new RegExp(`^(?:${subjects.join("|")}) (?:${verbs})\\b`, "i");

/** What a lock screen shows of a title for certain. Source: house rule. */
const AT_A_GLANCE = 25;

describe("what gardens are told", () => {
  test("has titles that say what to do with what at a glance", () => {
    const hidden = seen(({ part, verb = "", object = "", text }) => {
      const [before = ""] = verb.split("…");
      const glance = text.slice(0, AT_A_GLANCE).toLowerCase();
      const named = glance.includes(object.slice(0, 4).toLowerCase());
      return part === "title" && !(glance.startsWith(before.trim().toLowerCase()) && named);
    });
    expect(hidden).toEqual([]);
  });

  test("are thousands of sentences", () => {
    expect(texts().length).toBeGreaterThan(5000);
  });

  test("has cautions that name what they are about", () => {
    const vague = /\b(?:they|them|these)\b/i;
    expect(
      broken(({ part, text }) => part === "caution" && vague.test(text) && !names.test(text)),
    ).toEqual([]);
  });

  test("has quarters, thirds and halves with their own signs", () => {
    expect(broken(({ text }) => /\b\d*\.(?:25|33|5|66|75) (?:in|ft|gal)\b/.test(text))).toEqual([]);
  });

  test("has no doubled spaces, stops or commas, and begins with a capital, a figure or a fraction", () => {
    expect(broken(({ text }) => / {2}|\.\.|,,| [.,;:]/.test(text))).toEqual([]);
    expect(broken(({ text }) => !/^[\p{Lu}\d¼½¾⅓⅔⅛]/u.test(text))).toEqual([]);
  });

  test("has verbs that agree with their crops", () => {
    expect(
      broken(({ text }) => agreeing(singulars, "go|are|have|want|stand|need").test(text)),
    ).toEqual([]);
    expect(
      broken(({ text }) => agreeing(plurals, "goes|is|has|wants|stands|needs").test(text)),
    ).toEqual([]);
  });

  test("is in the household's measures alone", () => {
    const us = /\d (?:in|ft|gal|qt|ft²)\b|°F|\b(?:inch|inches|an? foot|feet)\b/;
    const metric = /\d (?:mm|cm|m|L|m²)\b|°C/;
    expect(seen(({ measures, text }) => measures === "metric" && us.test(text))).toEqual([]);
    expect(seen(({ measures, text }) => measures === "us" && metric.test(text))).toEqual([]);
  });

  test("has no words of the machinery", () => {
    const machinery =
      /\b(?:emergence|windows?|rungs?|thresholds?|degree.days?|milestones?|anchors?|overdue|undefined|null|NaN|The plan asks|that is there)\b/i;
    expect(seen(({ text }) => machinery.test(text))).toEqual([]);
  });

  test("has sentences of at most thirty words", () => {
    const long = (text: string) =>
      text.split(/[.;:!?](?:\s|$)/).some((sentence) => sentence.split(/\s+/).length > 30);
    expect(seen(({ text }) => long(text))).toEqual([]);
  });

  test("has the pests and animals of its own part of the world", () => {
    const away = ["maritime", "mediterranean", "southern"];
    const american = /\braccoons?\b|squash bugs|spiny yellow grubs/i;
    expect(broken(({ garden, text }) => away.includes(garden) && american.test(text))).toEqual([]);
  });
});
