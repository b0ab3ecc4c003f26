import { plus } from "../days/day.ts";
import type { Growing } from "../growth/growing.ts";
import { middle, reached, upMilestone } from "../growth/milestones.ts";
import type { Practice } from "./practice.ts";
import { how, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

function tasks(growing: Growing): readonly Task[] {
  const facts = growing.crop.cover;
  const up = upMilestone(growing);
  if (!facts || growing.sowing > 1 || growing.planting.start !== "seed outdoors" || !reached(up))
    return [];
  const object = objectOf(growing);
  const on = plus(up.usual, facts.onDaysAfterUp.value);
  const shared = {
    rhythm: "session",
    grounds: up.grounds,
    hangsOn: tasksBehind(growing, "start"),
    because: [["Counted from when it is up, ", { day: up.usual }, "."]],
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
  if (!facts.offDaysAfterUp) return [covering];
  const [least, most] = facts.offDaysAfterUp.value;
  return [
    covering,
    plantingTask(growing, "cover", "off", {
      ...shared,
      after: [covering.id],
      window: window(
        plus(up.usual, least),
        plus(up.usual, middle(facts.offDaysAfterUp.value)),
        plus(up.usual, most + 10),
      ),
      harm: "when you can",
      minutes: 5,
      title: { verb: "Net off", object, where: "bed" },
      say: [
        how("Take the net off, shake it out and dry it before it is put away."),
        sign(facts.offSign),
      ],
    }),
  ];
}

/** Covers on and off by the plant's stage. */
export const COVER: Practice = { name: "cover", pass: "rest", tasks };
