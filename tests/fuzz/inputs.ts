import { readFileSync } from "node:fs";
import fc from "fast-check";
import { filesOf, snapshotOf, zipped } from "../host/backup/archived.ts";

/** What is read from outside, by kind. */
export const KINDS = [
  ...["plan", "diary", "station", "absences", "weather"],
  ...["form", "path", "header", "archive"],
] as const;

/** One kind of input. */
export type Kind = (typeof KINDS)[number];

const plansAt = (name: string) =>
  readFileSync(new URL(`../../plans/${name}`, import.meta.url), "utf8");
const PLANS = [plansAt("first-steps/2027.yaml"), plansAt("quarry-lane/2027.yaml")];

const CROPS = [
  "carrot",
  "potato: early red",
  "tomato",
  "garlic",
  "lettuce",
  "apple",
  "kale",
  "okra",
];
const HOW_MUCH = [
  "6 plants",
  "3 rows",
  "10 ft",
  "0 rows",
  "-1 plants",
  "1e9 rows",
  "½ row",
  "99999999999 cloves",
];
const SAID = [
  ...["sow 8 May", "set out 31 Feb", "every 14 days", "every 0 days", "5 times", "1e6 times"],
  ...[
    "after the garlic",
    "between the carrot rows",
    "under a board",
    "sprouted first",
    "from sets",
  ],
  ...[
    "harden off 7 days",
    "harden off 9999 days",
    "in since 14 Oct 0001",
    "like cilantro",
    "variety ''",
  ],
];
const DAYS = [
  "2 May",
  "31 Feb",
  "29 Feb",
  "1 Jan 0001",
  "31 Dec 9999",
  "yesterday",
  "2027-05-08",
  "8/5",
];
const DEEDS = [
  ...[
    "carrots sown by Oda",
    "carrots up",
    "no sign of the peas",
    "undo: carrots up",
    "beets thinned",
  ],
  ...[
    "soil in South bed 58 °F",
    "low -500 °C",
    "1e99 in of rain",
    "moved the beets to the South bed",
  ],
  ...[
    "too wet to sow corn",
    "put off corn until 5 June",
    "skipped thinning of beets this year",
    "mice ate it",
  ],
];

/** Anything at all, of the signs that break readers more often than others. */
const odd = fc.oneof(
  fc.string({ unit: "binary", maxLength: 30 }),
  fc.constantFrom(
    "\u0000",
    "\uFEFF",
    "\r",
    "\u2028",
    "\uD800",
    "{",
    "[",
    "- ",
    "&a ",
    "*a",
    "<<: ",
    "!!js ",
    "|",
    "'",
    '"',
    "#",
    "\t",
  ),
  fc.constantFrom(..."0123456789-+.eE:/,;%".split("")),
  fc.nat(400).map((times) => "[".repeat(times)),
  fc.nat(3000).map((times) => "a ".repeat(times)),
);

const of = (...words: readonly string[]) => fc.constantFrom(...words);

/** Words between commas, as a crop's phrase has them. */
const phrase = fc
  .tuple(of(...CROPS), fc.array(fc.oneof(of(...HOW_MUCH), of(...SAID), odd), { maxLength: 5 }))
  .map(([crop, parts]) => `      - ${crop}: ${parts.join(", ")}`);

const diaryLine = fc
  .tuple(
    fc.oneof(of(...DAYS), odd),
    fc.oneof(of(...DEEDS), odd),
    fc.oneof(of("", "; ", ", and "), odd),
    of(...DEEDS),
  )
  .map(
    ([day, deed, between, more]) => `  - ${day}: ${deed}${between === "" ? "" : between + more}`,
  );

/** A text with some of its lines taken out, doubled, cut or followed by others. */
const changed = (text: fc.Arbitrary<string>, lines: fc.Arbitrary<string>) =>
  fc
    .tuple(
      text,
      fc.array(fc.tuple(fc.nat(), fc.nat(4), fc.oneof(lines, odd)), { minLength: 1, maxLength: 6 }),
    )
    .map(([whole, edits]) => edits.reduce(edited, whole.split("\n")).join("\n"));

function edited(
  lines: readonly string[],
  [place, how, added]: readonly [number, number, string],
): readonly string[] {
  const at = place % Math.max(1, lines.length);
  const line = lines[at] ?? "";
  const to = [
    [],
    [line, line],
    [line.slice(0, place % (line.length + 1))],
    [line, added],
    [line + added],
  ];
  return [...lines.slice(0, at), ...(to[how] ?? [line]), ...lines.slice(at + 1)];
}

const calendar = fc
  .array(
    fc.tuple(
      of("20270619", "00010101", "99991231", "20270230", "20270619T250000Z", ""),
      of("20270623", "99991231", "00010101", "20270619T090000"),
      of(
        "",
        "RRULE:FREQ=DAILY",
        "RRULE:FREQ=SECONDLY;COUNT=999999999",
        "RRULE:FREQ=YEARLY;BYDAY=1MO,-1SU;UNTIL=99991231",
        "RRULE:FREQ=",
        "DURATION:P9999999W",
        "RDATE:20270701,20270801",
      ),
      odd,
    ),
    { maxLength: 12 },
  )
  .map((events) => {
    const lines = events.flatMap(([start, end, rule, said]) => [
      ...["BEGIN:VEVENT", `DTSTART;VALUE=DATE:${start}`, `DTEND;VALUE=DATE:${end}`],
      ...[rule, `SUMMARY:${said.slice(0, 200)}`, "END:VEVENT"],
    ]);
    return ["BEGIN:VCALENDAR", "VERSION:2.0", ...lines, "END:VCALENDAR", ""].join("\r\n");
  });

const station = fc
  .tuple(
    of("date,low,high,rain", "DATE,TMIN,TMAX,PRCP", "date;low;high", "low,high", '"date","low'),
    fc.array(
      fc.tuple(
        of("2020-01-01", "2020-02-30", "0001-01-01", "x"),
        fc.oneof(fc.double(), fc.integer(), odd),
        fc.double(),
      ),
      { maxLength: 400 },
    ),
  )
  .map(([head, rows]) =>
    [head, ...rows.map(([day, low, high]) => `${day},${low},${high},0`)].join("\n"),
  );

const weather = fc.oneof(
  fc.json({ maxDepth: 6 }),
  fc
    .array(
      fc.tuple(
        fc.oneof(of("2027-05-08", "2027-05-09", "2027-02-30"), odd),
        fc.oneof(fc.double(), fc.constant(null)),
      ),
      { maxLength: 40 },
    )
    .map((days) => {
      const figures = days.map(([, figure]) => figure);
      const daily = {
        time: days.map(([day]) => day),
        temperature_2m_min: figures,
        temperature_2m_max: figures,
      };
      return JSON.stringify({ latitude: 46.6, longitude: -111.5, daily, daily_units: {} });
    }),
  odd,
);

const form = fc
  .array(
    fc.tuple(of("base", "text", "task", "say", "day", "link", "do", "phrase", "at", "step"), odd),
    { maxLength: 12 },
  )
  .map((fields) => new URLSearchParams(fields.map(([name, value]) => [name, value])).toString());

const path = fc
  .array(
    fc.oneof(
      of(
        "on",
        "bed",
        "quiet",
        "tasks.ics",
        "..",
        ".",
        "%2e",
        "~6f~",
        "~110000~",
        "owner-1",
        "helper-a-b-1",
      ),
      odd,
    ),
    { maxLength: 6 },
  )
  .map((parts) => parts.join("/"));

const header = fc
  .array(
    fc.oneof(
      of('"a"', "W/", "*", "gzip", ";q=0", ";q=", ",", "Fri, 07 May 2027 06:00:00 GMT", "identity"),
      odd,
    ),
    { maxLength: 20 },
  )
  .map((parts) => parts.join(""));

/** Bytes of an archive as letters, some of them changed, or a snapshot of odd values. */
const archive = fc.oneof(
  fc
    .tuple(fc.array(fc.tuple(fc.nat(), fc.nat(255)), { maxLength: 5 }), fc.option(fc.nat()))
    .map(([changes, to]) => {
      const bytes = zipped(filesOf());
      for (const [at, byte] of changes) bytes[at % bytes.length] = byte;
      return Buffer.from(to === null ? bytes : bytes.subarray(0, to % bytes.length)).toString(
        "latin1",
      );
    }),
  fc
    .tuple(
      of("versions", "diary", "tasks", "feeds", "owner", "weather", "people"),
      fc.jsonValue({ maxDepth: 4 }),
    )
    .map(([key, value]) =>
      Buffer.from(zipped(filesOf(snapshotOf({ [key]: value })))).toString("latin1"),
    ),
);

/** Inputs of each kind, made by its grammar. */
export const INPUTS: Readonly<Record<Kind, fc.Arbitrary<string>>> = {
  plan: changed(of(...PLANS), phrase),
  diary: fc.array(diaryLine, { minLength: 1, maxLength: 20 }).map((lines) => lines.join("\n")),
  ...{ station, absences: changed(calendar, odd), weather, form, path, header, archive },
};
