import { describe, expect, test } from "vitest";
import type { Schedule } from "../../src/app/build.ts";
import { type Day, isoOf, plus } from "../../src/base/days/day.ts";
import { daysNamed } from "../../src/engine/schedule/published-state.ts";
import type { ScheduledTask } from "../../src/engine/schedule/scheduled-task.ts";
import { drawnFor, samples } from "../depth.ts";
import { ALONE, isoDay, QUARRY, tellOf } from "../gardens.ts";
import { once } from "../once.ts";

const MORE = `  Pea bed:
    is: 12 x 4 ft
    crops:
      - pea: 1 row
      - radish: 10 ft, every 10 days, 4 times
      - parsnip: 1 row
      - basil: 6 plants, from seed indoors
      - pepper: 4 plants, from seed indoors
`;

/** What a diary may say of the sowings, with the days [from the 20th of April] on which it may be so. */
const LINES = [
  ["sowed the peas", 30],
  ["resowed the peas", 60],
  ["carrots sown", 40],
  ["carrots up", 70],
  ["beets failed", 60],
  ["sowed the beets", 40],
  ["parsnips not up yet", 60],
  ["slugs ate the lettuce", 90],
  ["sowed the tomatoes", 20],
] as const;

type Absent = { readonly text: string; readonly told: Schedule; readonly away: readonly Day[] };

/** Gardens with some absences of all and some lines in a diary, by one throw of the dice each. */
const gardens = once((): readonly Absent[] => {
  const roll = drawnFor(907);
  return Array.from({ length: samples(120, 12) }, (_, i) => {
    const start = isoDay("2027-03-15");
    const spans = Array.from({ length: 1 + Math.floor(roll() * 3) }, () => {
      const from = plus(start, Math.floor(roll() * 200));
      return { from, to: plus(from, Math.floor(roll() * 12)) };
    });
    const lines = LINES.filter(() => roll() < 0.5).map(([line, within]) => ({
      line,
      day: plus(isoDay("2027-04-20"), Math.floor(roll() * within)),
    }));
    const text = `${i % 2 === 0 ? QUARRY : ALONE}${MORE}${
      lines.length === 0
        ? ""
        : `diary:\n${lines.map(({ line, day }) => `  - ${isoOf(day)}: ${line}\n`).join("")}`
    }away:\n${spans.map(({ from, to }) => `  - everybody, ${isoOf(from)} to ${isoOf(to)}\n`).join("")}`;
    const days = spans.flatMap(({ from, to }) =>
      Array.from({ length: to - from + 1 }, (_, at) => plus(from, at)),
    );
    return { text, told: tellOf(text, { on: "2027-01-02" }), away: days };
  });
});

/** Whether a day is none of those on which everybody is away; else somebody of the two is at home on every day. */
const isSomebodyThere = ({ away }: Absent, day: Day) => !away.includes(day);

const each = (look: (task: ScheduledTask, garden: Absent) => string | null): readonly string[] =>
  gardens().flatMap((garden) =>
    garden.told.scheduled.flatMap((task) => {
      const wrong = look(task, garden);
      return wrong === null ? [] : [`${task.task.id} ${isoOf(task.day)} ${wrong}\n${garden.text}`];
    }),
  );

const upDays = ({ task }: ScheduledTask) =>
  daysNamed(task.say.filter(({ part }) => part === "how"));

describe("in gardens that are left alone at times, and whose diary says what was done late or again", () => {
  test("nothing is told for a day on which all are away, where another day of its window will do", () => {
    const wrong = each((scheduled, garden) => {
      const { day, window, done } = scheduled;
      if (done || isSomebodyThere(garden, day)) return null;
      for (let other = window.earliest; other <= window.latest; other = plus(other, 1))
        if (isSomebodyThere(garden, other)) return `could be on ${isoOf(other)}`;
      return null;
    });
    expect(wrong).toEqual([]);
  });

  test("a row is up, looked for and sown again after it goes in, in that order", () => {
    const wrong = each((scheduled) => {
      const { practice, say } = scheduled.task;
      if (practice !== "sow outdoors" && practice !== "repeat") return null;
      const days = [scheduled.day, ...upDays(scheduled)];
      const rising = days.every((day, i) => i === 0 || day > (days[i - 1] ?? day));
      return rising ? null : `${days.map(isoOf).join(" ")} ${JSON.stringify(say)}`;
    });
    expect(wrong).toEqual([]);
  });

  test("two rows of one crop that go in on one day are told alike, whatever made it that day", () => {
    const known = new Map<string, string>();
    const wrong = each((scheduled) => {
      const { practice, crop } = scheduled.task;
      if (practice !== "sow outdoors") return null;
      const key = `${crop} ${scheduled.day}`;
      const is = upDays(scheduled).map(isoOf).join(" ");
      const was = known.get(key) ?? is;
      known.set(key, was);
      return was === is ? null : `${is}, elsewhere ${was}`;
    });
    expect(wrong).toEqual([]);
  });

  test("work on seedlings comes after their row is in", () => {
    const wrong = each((scheduled, { told }) => {
      const { practice, subject, step } = scheduled.task;
      if (!["thin", "board", "weed"].includes(practice) || subject.kind !== "planting") return null;
      const number = Number(/^sowing-(?<number>\d+)-/.exec(step)?.groups?.number ?? 1);
      const start = told.scheduled.find(
        ({ task: { sets } }) =>
          sets?.act === "start" && sets.planting === subject.key && sets.sowing === number,
      );
      return start === undefined || scheduled.done || scheduled.day > start.day
        ? null
        : `in on ${isoOf(start.day)}`;
    });
    expect(wrong).toEqual([]);
  });

  test("no row is told to be sown after it was seen up, unless it failed meanwhile", () => {
    const wrong = each((scheduled, { text }) => {
      const { sets, crop } = scheduled.task;
      const up = new RegExp(`(2027-\\S+): ${crop}s up\\n`).exec(text)?.[1];
      if (sets?.act !== "start" || sets.sowing !== 1 || up === undefined || scheduled.done)
        return null;
      return scheduled.day < isoDay(up) ? null : `up on ${up}`;
    });
    expect(wrong).toEqual([]);
  });

  test("a board is never told off before the day on which green was seen, because of it", () => {
    const wrong = each((scheduled) => {
      const { practice, say } = scheduled.task;
      const [seen] = say.filter(({ pieces }) => pieces[0] === "Green was seen on ");
      if (practice !== "board" || !seen) return null;
      const [day] = daysNamed([seen]);
      return day === undefined || scheduled.day >= day ? null : `seen on ${isoOf(day)}`;
    });
    expect(wrong).toEqual([]);
  });
});
