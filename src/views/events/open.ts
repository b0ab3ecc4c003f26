import { type Day, plus } from "../../base/index.ts";
import type { ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { EVENING_BEFORE, type Event } from "./event.ts";
import { eventFor } from "./event-for.ts";
import { asManyAsFit, LONGEST_SESSION, lastDayText } from "./texts.ts";
import { sessionTitle, titleOf } from "./titles.ts";

/** The number of days after its last good day on which work is no longer asked about [days]. Source: house rule. */
const ASKED_FOR_DAYS = 28;

/** Whether work is still to be asked about on a day, in a household that wants to be asked. */
export function isAskedAbout(
  { task, done, day, window }: ScheduledTask,
  plan: Plan,
  on: Day,
): boolean {
  const waits = plan.assume === "open" && !done && task.rhythm === "session";
  return waits && day < on && on <= plus(window.latest, ASKED_FOR_DAYS);
}

/** Whether a task is still shown as open on that person's next working day. */
export function isOpen(
  scheduled: ScheduledTask,
  plan: Plan,
  openDays: Readonly<Record<string, Day>>,
): boolean {
  const [person, other] = scheduled.people;
  const day = person === undefined || other !== undefined ? undefined : openDays[person];
  return day !== undefined && isAskedAbout(scheduled, plan, day);
}

/** A person's still-open work as one all-day event on their next working day. `open` not empty, in id order. */
export function openEvent(
  person: string,
  day: Day,
  open: readonly ScheduledTask[],
  plan: Plan,
): Event {
  const titles = open.map((each) => titleOf([each], plan));
  const lines = open.map((each, i) => {
    const till = each.window.latest >= day ? lastDayText({ ...each, day }) : "";
    return `${titles[i] ?? ""}.${till === "" ? "" : ` ${till}`}`;
  });
  const head = "Still open:";
  const text = [head, ...asManyAsFit(lines, LONGEST_SESSION - head.length - 1)].join("\n");
  return {
    ...eventFor(open, {
      key: `${person}/open`,
      set: "sessions",
      kind: "open",
      title: sessionTitle(
        open.map((job) => [job]),
        "Still open: ",
      ),
      text,
      readerText: "",
      when: { kind: "all day", day },
      day,
      busy: false,
      remindMinutesBefore: EVENING_BEFORE,
    }),
    people: [person],
  };
}

/** The one line of a feed with nothing else to show, on the first day it shows. */
export function seasonEvent(plan: Plan, day: Day): Event {
  const text =
    "There is no work in the days this calendar shows. It fills again with the next plan.";
  return eventFor([], {
    key: `${plan.year}/garden/season`,
    set: "both",
    kind: "season",
    title: "Nothing due until the next plan",
    text,
    readerText: text,
    when: { kind: "all day", day },
    day,
    busy: false,
    remindMinutesBefore: EVENING_BEFORE,
  });
}
