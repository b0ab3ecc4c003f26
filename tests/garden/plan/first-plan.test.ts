import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CROPS } from "../../../src/crops/crops.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import type {
  FirstAnswers,
  FirstBed,
  FirstCrop,
  FirstPerson,
} from "../../../src/garden/model/first-answers.ts";
import { firstPlan } from "../../../src/garden/plan/first-plan.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";
import { ANSWERS, bedRow, cropRow } from "./first-answers.ts";

const read = (answers: FirstAnswers) =>
  readPlan(firstPlan(answers), { garden: "g", file: "plan" }, PRACTICES);

test("the answers are a whole plan: place, people, beds, and crops where they were put", () => {
  const { plan, problems } = read(ANSWERS);
  expect(problems).toEqual([]);
  expect(plan).toMatchObject({ name: "Brook: the <b>", year: 2027, measures: "metric" });
  expect(plan?.site).toMatchObject({ latitude: 60.1, longitude: 10.5, forecast: "Open-Meteo" });
  expect([plan?.site.hottestAfternoons?.si, plan?.site.coldestNights?.si]).toEqual([22, -7]);
  expect(plan?.people.map(({ name, gardens }) => [name, gardens.length])).toEqual([
    ["Ada", 1],
    ["Bo", 0],
  ]);
  expect(plan?.beds.map(({ name, kind }) => [name, kind])).toEqual([
    ["South bed", "bed"],
    ["Pots", "bags"],
    ["Glass", "greenhouse"],
  ]);
  expect(plan?.plantings.map(({ crop, bed, amount }) => [crop, bed, amount])).toEqual([
    ["carrot", "south-bed", { kind: "rows", count: 3 }],
    ["tomato", "pots", { kind: "plants", count: 6 }],
    ["leek", null, null],
  ]);
});

test("what was left empty is left out, and what is wrong is for the reader to report", () => {
  const crops = [cropRow({ crop: "leek" })];
  const bare = { ...ANSWERS, where: "", forecast: "", people: [], beds: [], crops };
  expect(firstPlan(bare)).not.toMatch(/latitude|people|beds/);
  expect(read(bare).plan?.plantings).toHaveLength(1);
  const wrong = read({ ...ANSWERS, lastFrost: "in spring" });
  expect(wrong.plan).toBeNull();
  expect(wrong.problems[0]?.at.line).toBeGreaterThan(5);
});

test("bare numbers have the garden's own units, and said ones their own", () => {
  const beds = [
    bedRow({ name: "A", length: "12", width: "4" }),
    bedRow({ name: "B", length: "3 m", width: "1.2 m" }),
    bedRow({ name: "C", kind: "bags", count: "6", holds: "10" }),
    bedRow({ name: "D", kind: "tunnel", length: "8", width: "6" }),
    bedRow({ name: "E", kind: "greenhouse" }),
  ];
  const crops = [cropRow({ amount: "2½", unit: "length", bed: 0 })];
  const text = firstPlan({ ...ANSWERS, measures: "inches and °F", beds, crops });
  for (const words of [
    "is: 12 ft x 4 ft",
    "is: 3 m x 1.2 m",
    "is: 6 bags of 10 gal",
    "is: tunnel, 8 ft x 6 ft",
    "is: greenhouse\n",
    "- carrot: 2½ ft\n",
  ])
    expect(text).toContain(words);
});

test("a crop in a bed of which nothing is left stands in none, and loses nothing else", () => {
  const { plan } = read({ ...ANSWERS, beds: [bedRow({}), ...ANSWERS.beds.slice(1)] });
  expect(plan?.plantings.map(({ crop, bed }) => [crop, bed])).toEqual([
    ["tomato", "pots"],
    ["carrot", null],
    ["leek", null],
  ]);
});

test("weather from elsewhere stands in for frost dates and temperatures", () => {
  const text = firstPlan({ ...ANSWERS, weather: "from Open-Meteo" });
  expect(text).toContain("\n  weather: from Open-Meteo\n");
  expect(text).not.toMatch(/frost|afternoons|nights/);
});

test("a guess says so in the plan", () => {
  const text = firstPlan({ ...ANSWERS, guessed: true });
  expect(text).toMatch(/last frost: about 20 May # guessed from the two temperatures/);
  expect(read({ ...ANSWERS, guessed: true }).problems).toEqual([]);
});

/** A name as people type them: any letters, signs and quotes, with a letter or a digit at the front so that it is one. */
const name = (front: string) =>
  fc
    .string({ unit: "grapheme", maxLength: 20 })
    .map((rest) => `${front} ${rest}`.replace(/[\p{Cc}\p{Zl}\p{Zp}\p{Zs}]+/gu, " ").trim());

const size = fc.double({ min: 0.3, max: 60, noNaN: true }).map((sides) => sides.toFixed(1));
const count = fc.integer({ min: 1, max: 400 }).map(String);

const person = (at: number): fc.Arbitrary<FirstPerson> =>
  fc.record({
    name: name(`P${at}`),
    gardens: fc.constantFrom("", "Sat 9-12", "Wed 18-19 and Sat 9-12", "weekends"),
    home: fc.constantFrom("", "every day but Tue", "weekdays from 17:30 and weekends"),
  });

const bed = (at: number): fc.Arbitrary<FirstBed> =>
  fc
    .record({
      name: name(`B${at}`),
      kind: fc.constantFrom("bed", "bags", "pots", "greenhouse", "tunnel"),
      sides: fc.option(fc.tuple(size, size)),
      count,
      holds: fc.option(size),
    })
    .map(({ sides, holds, ...rest }) => ({
      ...{ ...rest, length: sides?.[0] ?? "", width: sides?.[1] ?? "", holds: holds ?? "" },
    }));

const crops = (beds: number): fc.Arbitrary<readonly FirstCrop[]> =>
  fc.subarray([...CROPS], { maxLength: 12 }).chain((some) =>
    fc.tuple(
      ...some.map((crop) =>
        fc.record({
          crop: fc.constant(crop.one),
          bed: fc.option(fc.nat({ max: Math.max(0, beds - 1) })),
          amount: fc.option(count, { nil: "" }),
          unit: fc.constantFrom("plants", "rows", "length"),
          start: fc.constantFrom("", ...crop.starts),
          since: fc.constant(""),
        }),
      ),
    ),
  );

const typed: fc.Arbitrary<FirstAnswers> = fc
  .record({ people: fc.nat({ max: 4 }), beds: fc.nat({ max: 5 }) })
  .chain((many) =>
    fc.record({
      garden: name("G"),
      year: fc.constantFrom("2026", "2027", "2028"),
      measures: fc.constantFrom("inches and °F", "metric"),
      clock: fc.constantFrom("Europe/Oslo", "America/Denver", "Pacific/Auckland", "UTC"),
      where: fc.constantFrom("", "46.6", "46.59, -112.04", "46.59° N, 112.04° W"),
      lastFrost: fc.constantFrom("about 6 May", "20 Apr, 6 May, 21 May"),
      firstFrost: fc.constantFrom("about 2 Oct", "17 Sep, 2 Oct, 17 Oct"),
      guessed: fc.boolean(),
      hottest: fc.constantFrom("", "28 °C", "82 °F"),
      coldest: fc.constantFrom("", "-8 °C", "18 °F"),
      weather: fc.constant(""),
      forecast: fc.constant(""),
      people: fc.tuple(...Array.from({ length: many.people }, (_, at) => person(at))),
      beds: fc.tuple(...Array.from({ length: many.beds }, (_, at) => bed(at))),
      crops: crops(many.beds),
    }),
  );

describe("whatever a form can hold", () => {
  test("is a plan without a problem, and all that was typed is in it", () => {
    fc.assert(
      fc.property(typed, (answers) => {
        const { plan, problems } = read(answers);
        expect(problems.filter(({ weight }) => weight === "problem")).toEqual([]);
        expect(plan?.name).toBe(answers.garden);
        expect(plan?.year).toBe(Number(answers.year));
        expect(plan?.people.map((each) => each.name)).toEqual(answers.people.map((p) => p.name));
        for (const [at, { gardens, home }] of answers.people.entries()) {
          expect(plan?.people[at]?.gardens.length === 0).toBe(gardens === "");
          expect(plan?.people[at]?.home.length === 0).toBe(home === "");
        }
        expect(plan?.beds.map((each) => each.name)).toEqual(answers.beds.map((b) => b.name));
        for (const [at, said] of answers.beds.entries()) sameBed(plan?.beds[at], said);
        const keyOf = new Map(plan?.beds.map((each) => [each.name, each.key]));
        for (const said of answers.crops) {
          const planting = plan?.plantings.find(({ written }) => written === said.crop);
          const at = said.bed === null ? undefined : answers.beds[said.bed];
          expect(planting?.bed).toBe(at ? keyOf.get(at.name) : null);
          expect(amountOf(planting?.amount ?? null)).toBe(
            said.amount === "" ? null : Number(said.amount),
          );
          if (said.start !== "") expect(planting?.start).toBe(said.start);
        }
        expect(plan?.plantings).toHaveLength(answers.crops.length);
      }),
    );
  });

  test("never becomes another key of the plan", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (said) => {
        const crops = [cropRow({ crop: "leek" })];
        const { plan } = read({ ...ANSWERS, garden: said, beds: [], crops });
        return plan === null || (plan.plantings.length === 1 && plan.diary.length === 0);
      }),
    );
  });
});

type PlanOf = NonNullable<ReturnType<typeof read>["plan"]>;

function sameBed(bed: PlanOf["beds"][number] | undefined, said: FirstBed): void {
  const { kind, length, width, count } = said;
  if (kind === "bags" || kind === "pots") expect(bed?.bags?.count).toBe(Number(count));
  else if (length === "") expect(bed?.lengthCm).toBeNull();
  else {
    const sides = [bed?.widthCm?.said?.value, bed?.lengthCm?.said?.value];
    expect(sides).toEqual([Number(length), Number(width)].sort((a, b) => a - b));
  }
}

function amountOf(amount: PlanOf["plantings"][number]["amount"]): number | null {
  if (amount === null) return null;
  return amount.kind === "length" ? (amount.length.said?.value ?? null) : amount.count;
}
