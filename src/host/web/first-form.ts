import type { CropName } from "../../app/index.ts";
import {
  AMOUNT_UNITS,
  BED_KINDS,
  type FirstAnswers,
  type FirstBed,
  type FirstCrop,
  type FirstPerson,
} from "../../app/records.ts";

/** The pages of the form in their order. */
export const STEPS = ["garden", "frost", "people", "beds", "crops", "amounts", "look"] as const;

/** One of them. */
export type FormStep = (typeof STEPS)[number];

/** How somebody knows the frosts: the dates, or by two temperatures, or by the years behind the place. */
export const FROST_WAYS = ["dates", "place", "numbers"] as const;

/** One of them. */
export type FrostWay = (typeof FROST_WAYS)[number];

/**
 * All that was typed and chosen, on whichever page. `years` are those behind the place as they were found, a file's text; `text` is the
 * plan as it was changed by hand, from the one that `textOf` is; each empty where there is none.
 */
export type FirstForm = {
  readonly answers: FirstAnswers;
  readonly way: FrostWay;
  readonly south: boolean;
  readonly years: string;
  readonly looked: boolean;
  /** The town that was looked for. */
  readonly town: string;
  readonly text: string;
  readonly textOf: string;
};

/** Rows of each kind that a form can have; what a plan's reader takes. */
export const MOST_ROWS = { people: 50, beds: 200, crops: 500 } as const;

/** Letters of one line's answer, and of one that is a text. */
const MOST_LETTERS = { line: 400, text: 300_000 } as const;

const oneLine = (said: string) => said.replace(/[\s\p{Cc}]+/gu, " ").trim();

const LINES = [
  "garden",
  "year",
  "clock",
  "where",
  "lastFrost",
  "firstFrost",
  "hottest",
  "coldest",
] as const;

/** What a form holds. Null where it is longer than such a form can be. */
export function readForm(form: URLSearchParams): FirstForm | null {
  if ([...form].some(([name, said]) => said.length > mostFor(name))) return null;
  const line = (name: string) => oneLine(form.get(name) ?? "");
  const text = (name: string) => (form.get(name) ?? "").replace(/\r\n?/g, "\n");
  const one = <Choice extends string>(name: string, choices: readonly Choice[], usual: Choice) =>
    choices.find((choice) => choice === form.get(name)) ?? usual;
  const rows = (kind: keyof typeof MOST_ROWS) => rowCount(form, kind);
  const [people, beds, crops] = [rows("people"), rows("beds"), rows("crops")];
  if (people === null || beds === null || crops === null) return null;
  const lines = Object.fromEntries(LINES.map((name) => [name, line(name)])) as Record<
    (typeof LINES)[number],
    string
  >;
  const answers: FirstAnswers = {
    ...lines,
    measures: one("measures", ["metric", "inches and °F"], "metric"),
    guessed: false,
    weather: "",
    forecast: line("forecast"),
    people: upTo(people, (i): FirstPerson => {
      const at = (name: string) => line(`people.${i}.${name}`);
      return { name: at("name"), gardens: at("gardens"), home: at("home") };
    }),
    beds: upTo(beds, (i): FirstBed => {
      const at = (name: string) => line(`beds.${i}.${name}`);
      const kind = one(`beds.${i}.kind`, BED_KINDS, "bed");
      return {
        name: at("name"),
        kind,
        length: at("length"),
        width: at("width"),
        count: at("count"),
        holds: at("holds"),
      };
    }),
    crops: upTo(crops, (i): FirstCrop => {
      const at = (name: string) => line(`crops.${i}.${name}`);
      const bed = /^\d{1,3}$/.test(at("bed")) ? Number(at("bed")) : null;
      const unit = one(`crops.${i}.unit`, AMOUNT_UNITS, "plants");
      return {
        crop: at("crop"),
        bed,
        amount: at("amount"),
        unit,
        start: at("start"),
        since: at("since"),
      };
    }),
  };
  return {
    answers,
    way: one("way", FROST_WAYS, "dates"),
    south: form.get("half") === "south",
    years: text("years"),
    looked: form.get("looked") === "yes",
    town: line("town"),
    text: text("text"),
    textOf: text("textOf"),
  };
}

const mostFor = (name: string) =>
  name === "text" || name === "textOf" || name === "weather"
    ? MOST_LETTERS.text
    : MOST_LETTERS.line;

const upTo = <Row>(count: number, row: (i: number) => Row): readonly Row[] =>
  Array.from({ length: count }, (_, i) => row(i));

/** One more than the last row's place; null where that is more than a plan can have. */
function rowCount(form: URLSearchParams, kind: keyof typeof MOST_ROWS): number | null {
  const places = [...form.keys()].flatMap((name) => {
    const found = new RegExp(`^${kind}\\.(\\d{1,6})\\.`).exec(name);
    return found ? [Number(found[1]) + 1] : [];
  });
  const most = places.reduce((a, b) => Math.max(a, b), 0);
  return most > MOST_ROWS[kind] ? null : most;
}

/** All of a form as the pairs that a page sends back, so that the next page holds what this one does not show. */
export function fieldsOf({ answers, ...form }: FirstForm): readonly (readonly [string, string])[] {
  const { people, beds, crops, guessed: _, weather: __, ...lines } = answers;
  return [
    ...Object.entries(lines),
    ...rowFields("people", people),
    ...rowFields("beds", beds),
    ...rowFields(
      "crops",
      crops.map(({ bed, ...rest }) => ({ ...rest, bed: bed === null ? "" : String(bed) })),
    ),
    ["way", form.way],
    ["half", form.south ? "south" : "north"],
    ["years", form.years],
    ["looked", form.looked ? "yes" : ""],
    ["town", form.town],
    ["text", form.text],
    ["textOf", form.textOf],
  ];
}

function rowFields(
  kind: string,
  rows: readonly Readonly<Record<string, string>>[],
): readonly (readonly [string, string])[] {
  return rows.flatMap((row, i) =>
    Object.entries(row).map(([name, said]) => [`${kind}.${i}.${name}`, said] as const),
  );
}

const FROST_FIELDS = [
  "way",
  "half",
  "town",
  "where",
  "lastFrost",
  "firstFrost",
  "hottest",
  "coldest",
  "forecast",
];

/** Which page asks for an answer, by the field's name; null for what no page asks for. */
export function stepOf(field: string): FormStep | null {
  const [top = "", , part] = field.split(".");
  if (["garden", "year", "measures", "clock"].includes(top)) return "garden";
  if (FROST_FIELDS.includes(top)) return "frost";
  if (top === "people" || top === "beds") return top;
  if (top === "crop") return "crops";
  return top === "crops" && part !== "crop" ? "amounts" : null;
}

/** The crops that were ticked, each with what was said of it before; what was unticked is gone. New ones stand in the only bed, if there is one. */
export function withTicked(
  form: FirstForm,
  ticked: readonly string[],
  offers: readonly CropName[],
): FirstForm {
  const { answers } = form;
  const named = answers.beds.flatMap(({ name }, i) => (name === "" ? [] : [i]));
  const bed = named.length === 1 ? (named[0] ?? null) : null;
  const crops = offers
    .filter(({ key }) => ticked.includes(key))
    .map(
      ({ one, unit }): FirstCrop =>
        answers.crops.find(({ crop }) => crop === one) ?? {
          ...{ crop: one, bed, amount: "", unit, start: "", since: "" },
        },
    );
  return { ...form, answers: { ...answers, crops } };
}

/**
 * The answers as a plan is made of them: of what is said of frosts, that which the way that was chosen asks for. `guessed` are the
 * dates by the two temperatures; null: none.
 */
export function answersOf(
  form: FirstForm,
  guessed: { readonly lastFrost: string; readonly firstFrost: string } | null,
): FirstAnswers {
  const { answers, way } = form;
  const dates = { ...answers, weather: "" };
  if (way === "dates") return dates;
  if (way === "numbers")
    return {
      ...dates,
      ...(guessed ?? { lastFrost: "", firstFrost: "" }),
      guessed: guessed !== null,
    };
  return {
    ...answers,
    lastFrost: "",
    firstFrost: "",
    hottest: "",
    coldest: "",
    weather: "from Open-Meteo",
  };
}
