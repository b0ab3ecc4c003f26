import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cropNames } from "../../../src/app/plan-text.ts";
import {
  answersOf,
  fieldsOf,
  MOST_ROWS,
  readForm,
  STEPS,
  stepOf,
  withTicked,
} from "../../../src/host/web/first-form.ts";
import { formWith, TYPED, typed } from "./forms.ts";

describe("a form", () => {
  test("holds all that was typed, and gives it back as it was sent", () => {
    const sent = Object.fromEntries(fieldsOf(formWith()));
    for (const [name, said] of Object.entries(TYPED)) expect(sent[name], name).toBe(said);
  });

  test("loses nothing however often it is sent on", () => {
    const words = fc.string({ unit: "grapheme", maxLength: 40 });
    fc.assert(
      fc.property(fc.tuple(words, words, words), ([garden, name, since]) => {
        const form = formWith({ garden, "beds.2.name": name, "crops.1.since": since });
        const again = readForm(new URLSearchParams(fieldsOf(form).map(([a, b]) => [a, b])));
        expect(again).toEqual(form);
      }),
    );
  });

  test("takes what was chosen from its lists alone", () => {
    const form = formWith({
      measures: "cubits",
      way: "stars",
      "beds.0.kind": "moon",
      "crops.0.unit": "sacks",
      "crops.0.bed": "x",
    });
    expect([form.answers.measures, form.way]).toEqual(["metric", "dates"]);
    expect(form.answers.beds[0]?.kind).toBe("bed");
    expect([form.answers.crops[0]?.unit, form.answers.crops[0]?.bed]).toEqual(["plants", null]);
  });

  test("is bounded in its rows and its letters", () => {
    for (const [kind, most] of Object.entries(MOST_ROWS)) {
      expect(readForm(typed({ [`${kind}.${most - 1}.name`]: "A" }))).not.toBeNull();
      expect(readForm(typed({ [`${kind}.${most}.name`]: "A" }))).toBeNull();
    }
    expect(readForm(typed({ garden: "x".repeat(401) }))).toBeNull();
    expect(readForm(typed({ text: "x".repeat(300_001) }))).toBeNull();
  });

  test("has every field of its rows and lines on one of its pages", () => {
    for (const name of Object.keys(TYPED))
      expect(name.endsWith(".crop") ? "crops" : stepOf(name), name).not.toBeNull();
    expect(new Set(Object.keys(TYPED).map(stepOf)).size).toBe(STEPS.length - 1);
    expect(stepOf("crop")).toBe("crops");
    expect(stepOf("text")).toBeNull();
  });
});

describe("ticked crops", () => {
  test("keep what was said of them, and lose it only when they are unticked", () => {
    const form = withTicked(formWith(), ["tomato", "leek"], cropNames());
    expect(form.answers.crops).toEqual([
      { crop: "leek", bed: null, amount: "", unit: "plants", start: "", since: "" },
      formWith().answers.crops[1],
    ]);
  });

  test("stand in the garden's only bed until it is said otherwise", () => {
    const one = formWith({ "beds.0.name": "", "beds.0.length": "", "beds.0.width": "" });
    const { crops } = withTicked(one, ["leek"], cropNames()).answers;
    expect(crops[0]?.bed).toBe(1);
  });
});

describe("the answers for a plan", () => {
  test("have of frosts what the chosen way asks for", () => {
    expect(answersOf(formWith(), null)).toEqual(formWith().answers);
    const guess = { lastFrost: "1 May", firstFrost: "1 Oct" };
    expect(answersOf(formWith({ way: "numbers" }), guess)).toMatchObject({
      ...guess,
      guessed: true,
      hottest: "22 °C",
    });
    expect(answersOf(formWith({ way: "numbers" }), null)).toMatchObject({
      lastFrost: "",
      guessed: false,
    });
    const place = { weather: "from Open-Meteo", lastFrost: "", hottest: "" };
    expect(answersOf(formWith({ way: "place" }), null)).toMatchObject(place);
  });

  test("take another way without losing what was typed on the first", () => {
    expect(answersOf(formWith({ way: "numbers" }), null).lastFrost).toBe("");
    expect(Object.fromEntries(fieldsOf(formWith({ way: "numbers" }))).lastFrost).toBe(
      "about 20 May",
    );
  });
});
