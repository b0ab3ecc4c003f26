import { plus } from "../days/day.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import { type Milestone, middle, reached } from "../growth/milestones.ts";
import { upMilestone } from "../growth/up.ts";
import type { Practice } from "./practice.ts";
import { sowingNumbers } from "./repeat.ts";
import { how, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

type Up = Exclude<Milestone, { readonly none: string }>;

/** The last sowing under the net that has a day to be up on, `first` where it is the only one. */
function lastUnder(first: Growing, up: Up): { readonly growing: Growing; readonly up: Up } {
  for (const sowing of [...sowingNumbers(first)].reverse()) {
    if (sowing === first.sowing) break;
    const growing = { ...first, sowing };
    const later = upMilestone(growing);
    if (reached(later)) return { growing, up: later };
  }
  return { growing: first, up };
}

/** A cover the plan asks for over a crop that the facts give none: on as it goes into its place, off when the gardener likes. */
function askedFor(growing: Growing): readonly Task[] {
  const { under } = growing.planting;
  const placed = inPlace(growing);
  const thing = under.includes("net") ? "net" : under.includes("fabric") ? "fabric" : null;
  if (thing === null || !placed || growing.sowing > 1 || growing.planting.inSince !== null)
    return [];
  return [
    plantingTask(growing, "cover", "on", {
      window: window(placed.day, placed.day, plus(placed.day, 3), "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 10,
      title: {
        verb: thing === "net" ? "Net over" : "Fabric over",
        object: objectOf(growing),
        where: "bed",
      },
      say: [
        how("On hoops, clear of the leaves, its edges pegged or weighed down all round."),
        why("The plan asks for it, and it goes on the day they go in."),
      ],
      because: () => [["As it goes into its place, ", { day: placed.day }, "."]],
      grounds: placed.grounds,
      needs: [`${thing === "net" ? "a net" : "fabric"}, hoops and pegs`],
      hangsOn: tasksBehind(growing, "start", "set out"),
    }),
  ];
}

function tasks(growing: Growing): readonly Task[] {
  const facts = growing.crop.covers[0];
  if (!facts) return askedFor(growing);
  const up = upMilestone(growing);
  if (growing.sowing > 1 || growing.planting.start !== "seed outdoors" || !reached(up)) return [];
  const object = objectOf(growing);
  const on = up.usual;
  const shared = {
    rhythm: "session",
    grounds: up.grounds,
    hangsOn: tasksBehind(growing, "start"),
    because: () => [["Counted from when it is up, ", { day: up.usual }, "."]],
  } as const;
  const covering = plantingTask(growing, "cover", "on", {
    ...shared,
    window: window(plus(up.early, -1), on, plus(on, 4), "earlier"),
    harm: "this week",
    minutes: 10,
    title: { verb: "Net over", object, where: "bed" },
    say: [
      how("A fine net on hoops, clear of the leaves, its edges pegged or weighed down all round."),
      sign("The first seedlings show."),
      why(
        facts.against === "birds"
          ? "Birds pull seedlings as they come."
          : "Flies lay on the first leaves.",
      ),
    ],
    needs: ["a net, hoops and pegs"],
  });
  const [least, most] = facts.offDays.value;
  const last = lastUnder(growing, up);
  return [
    covering,
    plantingTask(growing, "cover", "off", {
      ...shared,
      grounds: last.up.grounds,
      hangsOn: tasksBehind(last.growing, "start"),
      because: () => [["Counted from when the last of it is up, ", { day: last.up.usual }, "."]],
      after: [covering.id],
      window: window(
        plus(last.up.usual, least),
        plus(last.up.usual, middle(facts.offDays.value)),
        plus(last.up.usual, most + 10),
      ),
      harm: "when you can",
      minutes: 5,
      title: { verb: "Net off", object, where: "bed" },
      say: [
        how("Take the net off, shake it out and dry it before it is put away."),
        sign(facts.offSign),
        why("They have outgrown what the net was for."),
      ],
    }),
  ];
}

/** Covers on and off by the plant's stage: on over the first sowing, off when the last of them no longer needs it. */
export const COVER: Practice = { name: "cover", pass: "rest", tasks };
