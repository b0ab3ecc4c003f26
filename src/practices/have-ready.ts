import { type Day, earliest, plus } from "../days/day.ts";
import { allGrounds } from "../growth/anchors.ts";
import type { Growing } from "../growth/growing.ts";
import { litres } from "../quantities/quantity.ts";
import { CLOSE_BED } from "./close-bed.ts";
import { mixInAllLitres } from "./hill.ts";
import type { SharedPractice } from "./practice.ts";
import { capital, how, type Sentence, why } from "./say.ts";
import {
  objectOf,
  plantingTask,
  sharedTask,
  slugOf,
  type Task,
  type Telling,
  tasksBehind,
  window,
} from "./task.ts";
import { type Want, wantsOf } from "./wanted.ts";

/** Things are at hand so many days before they are needed, and looked for on a Saturday. Source: house rule; a week, on the day that shops are open and work is not. */
const AHEAD_DAYS = 7;
const SATURDAY = 6;
/** Days before that from which it may be told: back to a Saturday, and as much more as a told day stays put. Source: house rule. */
const EARLIER_DAYS = 9;

/** What some bags of mix bring beside themselves: they are filled from it all summer. */
const WITH_BAGS = "bagged mix";

/** The last day that is a week before it is likely needed, and before it may be. */
const lastDayFor = ({ day, from }: Want): Day => earliest(plus(day, -AHEAD_DAYS), plus(from, -1));

/** How such a task is told, of a planting or a bed. */
function readyTold(want: Want, object: string, more: readonly Sentence[] = []): Telling {
  const due = lastDayFor(want);
  const { day, from, things, grounds } = want;
  return {
    window: window(plus(due, -EARLIER_DAYS), due, plus(from, -1), "earlier"),
    weekday: SATURDAY,
    harm: "when you can",
    rhythm: "daily",
    minutes: 10,
    title: { verb: "Have ready for", object, where: null },
    say: [
      how(`${capital(things.join("; "))}: wanted about `, { day }, "."),
      ...more,
      why("A week is time to find, borrow or buy what is missing."),
    ],
    because: () => [["A Saturday at least a week before it is needed, ", { day }, "."]],
    grounds: allGrounds(grounds),
    brings: things.includes("bags and mix") ? [...things, WITH_BAGS] : things,
  };
}

/** How much mix the bags take in all, from planting to the last lift. */
function mixTold(growing: Growing): readonly Sentence[] {
  const mix = mixInAllLitres(growing);
  return mix === null ? [] : [how("About ", { quantity: litres(mix) }, " of mix in all.")];
}

/** What a planting's jobs need beside everyday tools, each thing named once, on a Saturday; none for later sowings. */
export function haveReady(growing: Growing): readonly Task[] {
  return wantsOf(growing).map((want) =>
    plantingTask(growing, "things to have", want.step, {
      ...readyTold(want, objectOf(growing), want.step === "bags" ? mixTold(growing) : []),
      hangsOn: tasksBehind(growing, "start", "set out"),
    }),
  );
}

/** The same for what is done bed by bed: compost and a cover at hand before a bed is closed. */
export const HAVE_FOR_BEDS: SharedPractice = {
  name: "things to have",
  tasks: (garden) =>
    CLOSE_BED.tasks(garden).map(
      ({ practice, bed, needs, grounds, title, window: { due, earliest } }) => {
        const step = slugOf(practice);
        const free = allGrounds(grounds, ["place free"]);
        const want: Want = { step, day: due, from: earliest, things: needs, grounds: free };
        return sharedTask(
          garden.plan.year,
          bed,
          "things to have",
          step,
          readyTold(want, title.object),
        );
      },
    ),
};
