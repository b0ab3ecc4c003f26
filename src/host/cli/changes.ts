import { buildSchedule, horizonAt } from "../../app/feed.ts";
import { type Day, dayFromIso, sayDay } from "../../base/days/day.ts";
import { startOf } from "../../base/days/instants.ts";
import { type ParsedDiaryLine, parseDiaryLines } from "../../garden/diary/parse.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { changesOf } from "../../views/events/changes.ts";
import {
  type Call,
  type Command,
  type Exit,
  type LoadedGarden,
  load,
  rejectExtraWords,
  today,
  WrongUsage,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const since = sinceOf(call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { day } = today(call, loaded);
  if (since > day) throw new WrongUsage("--since must not lie after today");
  const { garden, newest } = loaded;
  const at = (when: Day, until: Day, publishedState = {}) => {
    const then = { ...garden, plans: garden.plans.map((plan) => upTo(plan, until)) };
    return buildSchedule(then, horizonAt(then, startOf(when, newest.site.clock)), publishedState);
  };
  const before = at(since, (since - 1) as Day);
  const now = at(day, day, before.publishedState);
  const said = diaryLinesBetween(loaded, since, day);
  const changes = changesOf(
    { before: before.scheduled, now: now.scheduled, diaryLines: said, since },
    garden.plans,
  );
  for (const { text: said, why } of changes)
    call.terminal.out(`${[said, ...why.map((line) => `    ${line}`)].join("\n")}\n`);
  if (changes.length === 0) call.terminal.out(`Nothing has moved since ${sayDay(since)}.\n`);
  return 0;
}

function sinceOf({ options }: Call): Day {
  const day = options.since === undefined ? null : dayFromIso(options.since);
  if (day === null) throw new WrongUsage("--since which day? Like 2027-05-08");
  return day;
}

/** The plan with its diary up to a day, that day with it. */
const upTo = (plan: Plan, day: Day): Plan => ({
  ...plan,
  diary: plan.diary.filter((line) => line.day <= day),
});

/** Lines written in those days, both inclusive. */
function diaryLinesBetween(
  { garden: { plans } }: LoadedGarden,
  from: Day,
  to: Day,
): readonly ParsedDiaryLine[] {
  return parseDiaryLines(plans).filter(({ line: { day } }) => day >= from && day <= to);
}

/** `changes PLAN --since DAY`: what the diary has moved, done, brought and taken away since then, and why. */
export const CHANGES: Command = { takes: ["since", "on"], run };
