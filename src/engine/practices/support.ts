import { plus } from "../../base/days/day.ts";
import { isRaised } from "../../garden/plan/begin.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import type { Practice } from "./practice.ts";
import { capital, how, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Days after it is sown or set out by which what it climbs stands: later its roots are hurt. Source: house rule. */
const BY_DAYS = 7;

function tasks(growing: Growing): readonly Task[] {
  const { support } = growing.crop;
  const placed = support && inPlace(growing);
  const { start, inSince } = growing.planting;
  if (!support || !placed || growing.sowing > 1 || inSince !== null || isRaised(start)) return [];
  return [
    plantingTask(growing, "stake and train", "support", {
      window: window(placed.day, placed.day, plus(placed.day, BY_DAYS), "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Put up sticks for", object: objectOf(growing), where: "bed" },
      say: [
        how(`${capital(support.things.join(" and "))}. ${support.how}`),
        why("Put up later, it goes through grown roots and after fallen plants."),
      ],
      because: () => [["On the day it goes in, ", { day: placed.day }, "."]],
      grounds: placed.grounds,
      needs: support.things,
      hangsOn: tasksBehind(growing, "start"),
    }),
  ];
}

/** What a crop climbs, put up on the day it is sown; where plants go in, it belongs to setting out. */
export const SUPPORT: Practice = { name: "stake and train", pass: "rest", tasks };
