import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { choose, type FeedChoice } from "../../src/calendar/choose.ts";
import type { Ledger } from "../../src/calendar/ledger.ts";
import { writeCalendar } from "../../src/calendar/write.ts";
import { type Garden, horizonAt, tell } from "../../src/feed.ts";
import { readPlan } from "../../src/plan/read.ts";
import type { Standing } from "../../src/schedule/placed.ts";
import { pack } from "../../src/store/bytes.ts";
import { medians } from "./clock.ts";

/** What a whole render of 60 plantings may take, warm [ms]. */
const MOST_MS = 10;
/** What the platform's free plan gives one call [ms of work]. */
const FREE_CALL_MS = 10;

const NOW = Date.UTC(2027, 4, 1, 18);
const DAY_MS = 86_400_000;

const CROPS = [
  "potato, 12 plants, sprouted first",
  "carrot, 3 rows, under a board",
  "beet, 2 rows",
  "lettuce, 2 rows, every 14 days, 3 times",
  "tomato, 6 plants, from seed indoors",
  "garlic, 40 cloves, plant this October",
] as const;

/** Ten beds of six plantings: two people with hours, absences, normals and a diary. */
function gardenText(): string {
  const beds = Array.from({ length: 10 }, (_, bed) => {
    const crops = CROPS.map((phrase) => {
      const [crop = "", ...more] = phrase.split(", ");
      return `      - ${crop}: sort ${bed}, ${more.join(", ")}`;
    });
    return `  Bed ${bed}:\n    is: 24 x 4 ft\n    crops:\n${crops.join("\n")}`;
  });
  return `garden: Sixty
year: 2027
measures: inches and °F
place:
  clock: America/Denver
  latitude: 46.6
  last frost: 20 Apr, 6 May, 21 May
  first frost: about 2 Oct
  greenhouse: 200 trays, kept above 45 °F
  weather:
    low: [11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]
    high: [30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]
people:
  Imre: { gardens: Wed 17-20 and Sat 8-14, home: weekdays from 17:30 and weekends }
  Oda: { gardens: Tue 17-20 and Sun 9-14, home: every day but Tue }
away:
  - Oda, 19 to 23 Jun
  - everybody, 1 Aug to 7 Aug
beds:
${beds.join("\n")}
diary:
  - 20 Apr: soil in Bed 1 48 °F
`;
}

const text = gardenText();
const read = readPlan(text, { garden: "sixty", file: "plans/sixty/2027.yaml", beside: {} });
if (read.plan === null) throw new Error(JSON.stringify(read.problems));
const checked = JSON.stringify([read.plan]);

const IMRE: FeedChoice = {
  of: { person: "imre" },
  kind: "sessions",
  bed: null,
  quiet: false,
  reader: false,
};
const ALL: FeedChoice = { ...IMRE, of: "household", kind: "tasks" };

type Kept = { readonly standing: Standing; readonly ledger: Ledger | null };

/** One render as the worker does it: the checked plan's JSON in; the body as it is stored, and its print, out. */
function render(now: number, choice: FeedChoice, kept: Kept) {
  const garden: Garden = { id: "sixty", plans: JSON.parse(checked) };
  const told = tell(garden, horizonAt(garden, now), kept.standing);
  const { text, ledger } = writeCalendar({
    garden: garden.id,
    name: "Sixty",
    events: choose(told.events, choice),
    quiet: false,
    reader: false,
    link: (event) => `https://sowbell.example/sixty/link/mac/event/${event.key}`,
    cause: now,
    ledger: kept.ledger,
  });
  const print = createHash("sha256").update(text).digest("base64url");
  return { text, print, packed: pack(text), ledger, standing: told.standing };
}

const NOTHING: Kept = { standing: {}, ledger: null };

test("a whole render of sixty plantings is done within ten milliseconds once warm", async () => {
  const begun = performance.now();
  const first = render(NOW, IMRE, NOTHING);
  const firstMs = performance.now() - begun;
  const all = render(NOW, ALL, NOTHING);
  const [fresh = 0, tasks = 0, again = 0, month = 0] = await medians([
    () => render(NOW, IMRE, NOTHING),
    () => render(NOW, ALL, NOTHING),
    () => render(NOW, IMRE, first),
    () => render(NOW + 31 * DAY_MS, ALL, all),
  ]);
  const events = all.text.split("BEGIN:VEVENT").length - 1;
  const rows: readonly (readonly [string, number])[] = [
    ["first call in a fresh isolate", firstMs],
    ["a person's feed, never told before", fresh],
    [`all ${events} tasks, never told before`, tasks],
    ["a person's feed, nothing changed", again],
    ["all tasks, a month later", month],
  ];
  console.log(
    `\n${read.plan?.plantings.length} plantings, whole render [ms]; a free call may take ${FREE_CALL_MS}\n${rows
      .map(([what, ms]) => `${what.padEnd(40)}${ms.toFixed(1).padStart(6)}`)
      .join("\n")}\n`,
  );
  expect(read.plan?.plantings.length).toBe(60);
  expect(events).toBeGreaterThan(100);
  expect(render(NOW, IMRE, first).text).toBe(first.text);
  for (const [what, ms] of rows.slice(1)) expect(ms, what).toBeLessThanOrEqual(MOST_MS);
});
