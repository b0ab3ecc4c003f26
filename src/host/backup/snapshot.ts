import * as v from "valibot";
import { type Day, dayFromIso } from "../../base/index.ts";
import { ROLES } from "../links/segment.ts";
import { MOST_LINES } from "../store/diary.ts";

/** The form of `garden.json` that this code writes and reads. A later form gets the next number. */
export const SNAPSHOT_FORM = 1;

const words = (most: number) =>
  v.pipe(v.string(), v.maxLength(most, `longer than ${most} letters`));
const whole = (least: number, most: number) =>
  v.pipe(
    v.number(),
    v.integer("no whole number"),
    v.minValue(least, `less than ${least}`),
    v.maxValue(most, `more than ${most}`),
  );
const rows = <Row extends v.GenericSchema>(row: Row, most: number) =>
  v.pipe(v.array(v.unknown()), v.maxLength(most, `more than ${most}`), v.array(row), v.readonly());

/** Ms since 1970 UTC, up to the year 2286. */
const Instant = whole(0, 1e13);
/** A whole day of the core, from 1900 to 2286. */
const CoreDay = v.pipe(
  whole(-25_567, 115_740),
  v.transform((day) => day as Day),
);
const IsoDay = v.pipe(
  words(10),
  v.check((text) => dayFromIso(text) !== null, "no such day"),
);
const Key = words(300);
const Person = v.nullable(words(200));

const Version = v.object({
  year: whole(1000, 9999),
  version: whole(1, 999_999_999),
  file: words(300),
  published: v.nullable(words(100)),
  savedAt: Instant,
  /** By the name a plan gives it, the check sum of each file beside it. */
  beside: v.record(words(100), v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/, "no check sum"))),
});

const Line = v.object({
  id: whole(1, MOST_LINES.garden),
  day: IsoDay,
  text: words(300),
  task: v.nullable(words(300)),
  person: Person,
  saidAt: Instant,
});

const LineSpan = v.object({
  person: Person,
  first: whole(1, MOST_LINES.garden),
  last: whole(1, MOST_LINES.garden),
  at: Instant,
});

/** A link without what opens it. */
const NamedLink = { role: v.picklist(ROLES), person: Person, serial: whole(1, 999_999) };

/** Units as quantities have them. */
const UNITS = [
  "in",
  "ft",
  "yd",
  "mm",
  "cm",
  "m",
  "ft²",
  "m²",
  "gal",
  "qt",
  "L",
  "°F",
  "°C",
] as const;

const Amount = v.object({
  kind: v.picklist(["length", "area", "volume", "temperature", "difference"]),
  si: v.pipe(v.number(), v.finite()),
  said: v.nullable(v.object({ value: v.pipe(v.number(), v.finite()), unit: v.picklist(UNITS) })),
});

const Piece = v.union([
  words(2000),
  v.object({ quantity: Amount, upTo: v.exactOptional(Amount) }),
  v.object({ day: CoreDay, weekday: v.exactOptional(v.literal(true)) }),
  v.object({ at: whole(0, 1440) }),
  v.object({ person: words(200) }),
]);

/** How a task was last published: what keeps its days calm. */
const Published = v.object({
  day: CoreDay,
  window: v.object({
    ...{ earliest: CoreDay, due: CoreDay, latest: CoreDay },
    better: v.picklist(["earlier", "later"]),
  }),
  people: rows(words(200), 1000),
  days: rows(CoreDay, 1000),
  lead: v.boolean(),
  note: v.nullable(
    v.object({
      part: v.picklist(["how", "sign", "why", "caution"]),
      for: v.picklist(["all", "household"]),
      pieces: rows(Piece, 1000),
    }),
  ),
});

const Celsius = v.pipe(v.number(), v.minValue(-100), v.maxValue(100));
const Weather = v.object({
  cell: words(200),
  known: v.object({
    source: v.picklist(["Open-Meteo", "MET Norway", "a file"]),
    asOf: CoreDay,
    days: rows(
      v.object({
        ...{ day: CoreDay, lowC: Celsius, highC: Celsius },
        rainMm: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(5000))),
        gustMps: v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(200))),
      }),
      1000,
    ),
    saidColder: rows(v.object({ day: CoreDay, lowC: Celsius }), 1000),
  }),
});

const FeedRevisions = v.object({
  ...NamedLink,
  feed: words(300),
  lastModified: Instant,
  /** By event key: its sequence and its stamp [ms since 1970 UTC]. */
  events: v.record(Key, v.tuple([whole(0, 1_000_000), Instant])),
});

/** `garden.json`: what a garden is made anew from, beside the texts of its plans. No link is in it that opens anything. */
export const SnapshotSchema = v.object({
  form: v.literal(SNAPSHOT_FORM, `not ${SNAPSHOT_FORM}: it was made by another Sowbell`),
  /** The garden's id, and the one that the UIDs of its events are made from. */
  garden: words(200),
  uids: words(200),
  owner: NamedLink.serial,
  versions: rows(Version, 20_000),
  diary: v.pipe(
    rows(Line, MOST_LINES.garden),
    v.check((all) => all.every(({ id }, at) => id > (all[at - 1]?.id ?? 0)), "not in order"),
  ),
  takenBack: rows(LineSpan, 10_000),
  people: rows(words(200), 10_000),
  revoked: rows(v.object({ ...NamedLink, at: Instant }), 10_000),
  tasks: v.record(Key, Published),
  former: v.record(Key, v.object({ tasks: rows(Key, 1000), at: Instant })),
  feeds: rows(FeedRevisions, 10_000),
  weather: v.nullable(Weather),
});

/** What `garden.json` holds. */
export type Snapshot = v.InferOutput<typeof SnapshotSchema>;

/**
 * The snapshot in a text, or what is wrong with it: the place in it (`diary 17, day`) and what is there. Keys it does not know are
 * left out.
 */
export function readSnapshot(
  text: string,
):
  | { readonly snapshot: Snapshot; readonly wrong: null }
  | { readonly snapshot: null; readonly wrong: string } {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { snapshot: null, wrong: "it is no JSON" };
  }
  const read = v.safeParse(SnapshotSchema, value, { abortEarly: true });
  if (read.success) return { snapshot: read.output, wrong: null };
  const [issue] = read.issues;
  const at = (issue.path ?? []).map(({ key }) => sayKey(key)).join(" ");
  return { snapshot: null, wrong: `${at === "" ? "" : `${at}: `}${issue.message}` };
}

/** A row by its place, counted from 1; a key by its letters, cut short. */
function sayKey(key: unknown): string {
  return typeof key === "number" ? String(key + 1) : String(key).slice(0, 60);
}
