import { describe, expect, test } from "vitest";
import type { Schedule } from "../../src/app/build.ts";
import { type Day, isoOf, plus } from "../../src/base/days/day.ts";
import type { PublishedState } from "../../src/engine/schedule/scheduled-task.ts";
import type { Ledger } from "../../src/views/calendar/ledger.ts";
import { gardenOf, isoDay, QUARRY } from "../gardens.ts";
import { once } from "../once.ts";
import { readStrictly, type StrictEvent } from "../strict.ts";
import { CHOICES, dawn, toldAt, write } from "./feeds.ts";

/** A year as it is lived: what is written down, on the day it is written. */
const LINES: readonly (readonly [string, string])[] = [
  ["2027-04-12", "tomatoes sown by Oda"],
  ["2027-05-02", "carrots sown by Oda"],
  ["2027-05-05", "soil in Root bed 44 °F"],
  ["2027-05-09", "beets sown"],
  ["2027-05-20", "carrots not up yet"],
  ["2027-05-24", "carrots up"],
  ["2027-05-26", "potatoes up"],
  ["2027-06-01", "lettuce up"],
  ["2027-06-06", "beets too small to thin"],
  ["2027-06-13", "beets thinned by Imre"],
  ["2027-06-14", "2 in of rain"],
  ["2027-06-20", "carrots thinned"],
  ["2027-06-22", "undo: carrots thinned"],
  ["2027-06-27", "carrots thinned"],
  ["2027-07-03", "slugs ate the lettuce"],
  ["2027-08-20", "first ripe tomato"],
  ["2027-09-14", "potatoes lifted"],
];

const textUpTo = (day: Day) => {
  const lines = LINES.filter(([on]) => isoDay(on) <= day);
  return lines.length === 0
    ? QUARRY
    : `${QUARRY}diary:\n${lines.map(([on, text]) => `  - ${on}: ${text}\n`).join("")}`;
};

type Lived = { readonly day: Day; readonly told: Schedule; readonly feeds: readonly string[] };

/** The garden told on every third day of the year and on each day that something is written, each after the one before. */
function live(): readonly Lived[] {
  const written = new Set(LINES.map(([on]) => isoDay(on)));
  const first = isoDay("2027-04-01");
  let standing: PublishedState = {};
  let ledgers: readonly (Ledger | null)[] = CHOICES.map(() => null);
  const lived: Lived[] = [];
  for (let i = 0; i < 190; i++) {
    const day = plus(first, i);
    if (i % 3 !== 0 && !written.has(day)) continue;
    const told = toldAt(gardenOf(textUpTo(day)), dawn(isoOf(day)), standing);
    const feeds = CHOICES.map((choice, k) => write(told, choice, dawn(isoOf(day)), ledgers[k]));
    ledgers = feeds.map(({ ledger }) => ledger);
    standing = told.publishedState;
    lived.push({ day, told, feeds: feeds.map(({ text }) => text) });
  }
  return lived;
}

const year = once(live);
const pairs = () =>
  year()
    .slice(1)
    .map((now, i) => [year()[i] as Lived, now] as const);

/** A feed's events as a strict reader takes them, each feed read once. */
const read = new Map<string, readonly StrictEvent[]>();
function eventsIn(text: string): readonly StrictEvent[] {
  const known = read.get(text) ?? readStrictly(new TextEncoder().encode(text)).events;
  read.set(text, known);
  return known;
}

describe("a year lived day by day with a growing diary", () => {
  test("never changes an id: the same job has the same, and none comes twice", () => {
    for (const { told } of year()) {
      const ids = told.scheduled.map(({ task }) => task.id);
      expect(new Set(ids).size).toBe(ids.length);
    }
    const all = new Set(year().flatMap(({ told }) => told.scheduled.map(({ task }) => task.id)));
    const first = new Set(year()[0]?.told.scheduled.map(({ task }) => task.id));
    const fresh = [...all].filter((id) => !first.has(id));
    // Weeks of water are named by their week; how long the season is dry moves with the harvest.
    expect(
      fresh.filter((id) => !id.includes("/water/") && !id.includes("/things-to-have/")),
    ).toEqual([]);
  });

  test("never tells a job done and due at once", () => {
    for (const { day, told } of year()) {
      const done = new Set(told.scheduled.filter((each) => each.done).map(({ task }) => task.id));
      // An event of a day that is past keeps what was done later beside what counts as done on its day.
      for (const event of told.events.filter((each) => each.day >= day)) {
        const kinds = new Set(event.tasks.map((id) => done.has(id)));
        expect(kinds.size, event.key).toBeLessThan(2);
      }
    }
  });

  test("raises stamps and sequences only, and only where something changed", () => {
    const changed = pairs().flatMap(([before, now]) =>
      [0, 1].map((i) => [before.feeds[i] ?? "", now.feeds[i] ?? ""] as const),
    );
    const apart = changed.filter(([before, now]) => before !== now);
    expect(apart.length).toBeGreaterThan(20);
    for (const [before, now] of apart) {
      const was = new Map(eventsIn(before).map((event) => [event.uid, event]));
      for (const event of eventsIn(now)) {
        const old = was.get(event.uid);
        if (!old) continue;
        const { stamp, sequence, ...told } = event;
        const { stamp: oldStamp, sequence: oldSequence, ...oldTold } = old;
        expect(sequence).toBeGreaterThanOrEqual(oldSequence);
        if (JSON.stringify(told) === JSON.stringify(oldTold))
          expect([stamp, sequence]).toEqual([oldStamp, oldSequence]);
        else expect(stamp).toBeGreaterThan(oldStamp);
      }
    }
  });

  test("moves nothing on a day on which nothing is written and no horizon passes", () => {
    const quiet = pairs().filter(
      ([before, now]) =>
        textUpTo(before.day) === textUpTo(now.day) &&
        isoOf(before.day).slice(0, 7) === isoOf(now.day).slice(0, 7),
    );
    expect(quiet.length).toBeGreaterThan(30);
    for (const [before, now] of quiet) expect(now.feeds).toEqual(before.feeds);
  });
});

describe("a cold spring, told through the diary", () => {
  const plain = once(() => toldAt(gardenOf(QUARRY), dawn("2027-07-01")));
  const dueOf = (told: Schedule) =>
    new Map(told.scheduled.map(({ task }) => [task.id, task.window.due]));
  const was = once(() => dueOf(plain()));
  const up = (key: string) =>
    plain().scheduled.find(({ task }) => task.id === `2027/${key}/thin/1`);
  const sown = ["carrot", "beet"];
  /** Each up ten days after the day it was likely to be: what thinning counts from. */
  const late = () =>
    sown.map((key) => {
      const thin = up(key);
      const days = thin?.task.because
        .flat()
        .find((piece) => typeof piece === "object" && "day" in piece);
      return [
        key,
        typeof days === "object" && "day" in days ? plus(days.day, 10) : (0 as Day),
      ] as const;
    });
  const is = once(() => {
    const diary = late()
      .map(([key, day]) => `  - ${isoOf(day)}: ${key}s up\n`)
      .join("");
    return dueOf(toldAt(gardenOf(`${QUARRY}diary:\n${diary}`), dawn("2027-07-01")));
  });

  test("moves what hangs on it by as much", () => {
    for (const key of sown)
      expect((is().get(`2027/${key}/thin/1`) ?? 0) - (was().get(`2027/${key}/thin/1`) ?? 0)).toBe(
        10,
      );
  });

  test("and nothing that does not", () => {
    const moved = [...is()].filter(
      ([id, due]) => was().get(id) !== undefined && was().get(id) !== due,
    );
    const others = moved.filter(([id]) => !sown.some((key) => id.startsWith(`2027/${key}/`)));
    // What a whole bed is told by the crops in it: water, weeding, closing, and what must be at hand for them.
    expect(
      others.filter(([id]) => !/\/(?:water|close-the-bed|things-to-have|weed)\//.test(id)),
    ).toEqual([]);
  });
});

describe("a holiday over a sowing's due day", () => {
  const ONE = QUARRY.replace(
    /people:[\s\S]*?beds:/,
    "people:\n  Imre: { gardens: every day 9-12 }\nbeds:",
  );
  const sowOf = (text: string) => {
    const told = toldAt(gardenOf(text), dawn("2027-03-01"));
    const found = told.scheduled.find(({ task }) => task.id === "2027/beet/sow-outdoors/1");
    if (!found) throw new Error("no sowing");
    return found;
  };
  const away = (from: Day, to: Day) => {
    const day = (each: Day) => isoOf(each);
    return ONE.replace("beds:\n", `away:\n  - Imre, ${day(from)} to ${day(to)}\nbeds:\n`);
  };
  const plain = once(() => sowOf(ONE));
  const words = (text: string) => JSON.stringify(sowOf(text).note?.pieces ?? []);

  test("moves it inside its window, to the better side, and says why", () => {
    const text = away(plus(plain().day, -2), plus(plain().day, 3));
    const moved = sowOf(text);
    expect(moved.day).toBe(plus(plain().day, 4));
    expect(moved.day).toBeLessThanOrEqual(moved.window.latest);
    expect(words(text)).toContain("is away till");
  });

  test("with no room in the window says so", () => {
    const text = away(plus(plain().day, -2), plus(plain().window.latest, 3));
    expect(sowOf(text).day).toBeGreaterThan(plain().window.latest);
    expect(words(text)).toContain("the last good day");
  });
});

describe("one hour a week in May", () => {
  const MORE = ["chard", "kohlrabi", "parsnip"];
  const HOUR = QUARRY.replace(
    /people:[\s\S]*?beds:/,
    "people:\n  Imre: { gardens: Sat 9-10, home: every day }\nbeds:",
  ).replace(
    "  Salad bed:",
    `  Long bed:\n    is: 40 x 4 ft\n    crops:\n${MORE.map((crop) => `      - ${crop}: 1 row\n`).join("")}  Salad bed:`,
  );
  const NO_BAGS = HOUR.replace(/ {2}Bags:[\s\S]*?(?= {2}Root bed:)/, "");
  const told = once(() => toldAt(gardenOf(NO_BAGS), dawn("2027-03-01")));
  const full = () =>
    told().events.filter(
      ({ kind, text }) => kind === "session" && text.includes("More than the hours hold."),
    );
  const waiting = () =>
    full()
      .map(({ text }) => /More than the hours hold\..*/.exec(text)?.[0] ?? "")
      .join("\n");

  test("keeps boards, bringing in and plantings", () => {
    const kept = told().scheduled.filter(
      ({ task }) =>
        task.practice === "board" || task.timed?.part === "in" || task.sets?.act === "start",
    );
    expect(kept.length).toBeGreaterThan(10);
    expect(kept.every(({ day, window }) => day <= window.latest)).toBe(true);
    expect(waiting()).not.toMatch(/Board|Bring in|Sow |Set out/);
  });

  test("names weeding as what can wait best", () => {
    expect(full().length).toBeGreaterThan(0);
    expect(waiting()).toMatch(/Weed/);
  });

  test("says so once a week at the most", () => {
    const weeks = full().map(({ day }) => Math.floor((day + 3) / 7));
    expect(new Set(weeks).size).toBe(weeks.length);
  });
});
