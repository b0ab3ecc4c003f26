import { isoOf, sayDay, WEEKDAYS, weekdayOf } from "../days/day.ts";
import { isoWithOffset } from "../days/instants.ts";
import type { Plan } from "../plan/plan.ts";
import type { Placed } from "../schedule/placed.ts";
import { planOfTask } from "../schedule/year-of.ts";
import { sayPart, voiceOf } from "../words/sentences.ts";
import { seasonTold, textOf } from "../words/texts.ts";
import { titleOf } from "../words/titles.ts";
import { atMost, type Call, type Command, type Exit, load, tellOn, today } from "./call.ts";

const byDay = (a: Placed, b: Placed) => a.day - b.day || (a.task.id < b.task.id ? -1 : 1);

function run(call: Call): Exit {
  atMost(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const years = loaded.asked.map((plan) => `${plan.year}/`);
  const tasks = tellOn(call, loaded, {})
    .placed.filter(({ task }) => years.some((year) => task.id.startsWith(year)))
    .sort(byDay);
  if (call.options.json) {
    const all = tasks.map((each) => asJson(each, planOfTask(each.task.id, loaded.garden.plans)));
    call.terminal.out(`${JSON.stringify(all, null, 2)}\n`);
    return 0;
  }
  const { day } = today(call, loaded);
  for (const each of tasks.filter((task) => task.day >= day))
    call.terminal.out(`${asLine(each, planOfTask(each.task.id, loaded.garden.plans))}\n`);
  return 0;
}

/** `Sat 8 May 2027  Thin beets, Root bed (Imre)  2027/beet/thin/1`. */
function asLine(placed: Placed, plan: Plan): string {
  const who = placed.people.map(voiceOf(plan, "household").nameOf).join(", ");
  const weekday = (WEEKDAYS[weekdayOf(placed.day) - 1] ?? "").slice(0, 3);
  const day = `${weekday} ${sayDay(placed.day, true)}`.padEnd(17);
  return `${day} ${titleOf([placed], plan)}${who === "" ? "" : ` (${who})`}  ${placed.task.id}`;
}

/** One task as `--json` gives it: days ISO, hours local with their offset, names as the plan has them. */
function asJson(placed: Placed, plan: Plan): Record<string, unknown> {
  const { task, window, at, day, usual } = placed;
  const voice = voiceOf(plan, "household");
  return {
    id: task.id,
    subject: task.subject.kind,
    planting: task.subject.kind === "planting" ? task.subject.key : null,
    crop: task.crop,
    bed: task.bed,
    practice: task.practice,
    step: task.step,
    title: titleOf([placed], plan),
    text: textOf(placed, voice),
    why: [sayPart(task.say, "why", voice), seasonTold(placed)].filter(Boolean).join(" "),
    harm: task.harm,
    rhythm: task.rhythm,
    certainty: task.certainty,
    earliest: isoOf(window.earliest),
    due: isoOf(window.due),
    latest: isoOf(window.latest),
    usual: usual === null ? null : isoOf(usual),
    day: isoOf(day),
    people: placed.people.map(voice.nameOf),
    minutes: task.minutes,
    starts: at ? isoWithOffset(day, at.from, plan.site.clock) : null,
    ends: at ? isoWithOffset(day, at.to, plan.site.clock) : null,
  };
}

/** `tasks PLAN [--json] [--on DAY]`: each job on its day, in day order; as lines from today on, as JSON all of them. */
export const TASKS: Command = { takes: ["json", "on"], run };
