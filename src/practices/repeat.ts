import { isTender } from "../crops/crops.ts";
import type { Outdoors } from "../crops/facts.ts";
import { earliest, plus } from "../days/day.ts";
import type { Growing } from "../growth/growing.ts";
import { middle } from "../growth/milestones.ts";
import { MOST_SOWINGS, plantingOutDay, type Reckoned } from "../growth/starting.ts";
import type { Practice } from "./practice.ts";
import { why } from "./say.ts";
import { sowingSay } from "./sow-outdoors.ts";
import { objectOf, plantingTask, type Task, window } from "./task.ts";

/** Days after the usual first frost by which the last sowing of a hardy crop must be ready. Source: house rule. */
const HARDY_GRACE_DAYS = 14;

/** The first sowing that the others are counted from: as the diary has it, else as it is reckoned. */
function firstSowing(growing: Growing, facts: Outdoors): Reckoned {
  const reckoned = plantingOutDay(growing, facts);
  const sown = growing.facts.flatMap((fact) =>
    fact.kind === "done" && fact.practice === "sow outdoors" ? [fact.day] : [],
  );
  return sown.length > 0 ? { ...reckoned, day: earliest(...sown), grounds: ["seen"] } : reckoned;
}

/**
 * Numbers of the sowings that a planting wants in its season, rising, the first always 1. A number whose soil
 * would be too warm for seed to wake is left out, and the others keep theirs; none would ripen after frost.
 */
export function sowingNumbers(growing: Growing): readonly number[] {
  const { planting, crop, plan } = growing;
  const facts = crop.outdoors;
  if (!planting.repeat || !facts || planting.start !== "seed outdoors") return [1];
  const first = firstSowing(growing, facts).day;
  const grace = isTender(crop) ? 0 : HARDY_GRACE_DAYS;
  const frost = plan.site.firstFrost;
  const last = frost
    ? plus(frost.usual, grace - middle(crop.harvest.days.value))
    : plus(first, 180);
  const most = Math.min(MOST_SOWINGS, planting.repeat.times ?? MOST_SOWINGS);
  const numbers = [1];
  for (let number = 2; number <= most; number++) {
    const day = plus(first, (number - 1) * planting.repeat.everyDays);
    const asleep =
      facts.soilMaxC !== null && growing.climate.soilC(day, growing.bed) > facts.soilMaxC.value;
    if (day <= last && !asleep) numbers.push(number);
  }
  return numbers;
}

function tasks(growing: Growing): readonly Task[] {
  const { planting, crop, sowing } = growing;
  const facts = crop.outdoors;
  if (!planting.repeat || !facts || sowing === 1 || planting.inSince !== null) return [];
  const first = firstSowing(growing, facts);
  const due = plus(first.day, (sowing - 1) * planting.repeat.everyDays);
  const leeway = Math.floor(planting.repeat.everyDays / 3);
  return [
    plantingTask({ ...growing, sowing: 1 }, "repeat", String(sowing), {
      window: window(plus(due, -leeway), due, plus(due, leeway), "earlier"),
      harm: "when you can",
      rhythm: "session",
      minutes: 15,
      title: { verb: "Sow more", object: objectOf(growing), where: "bed" },
      say: [
        ...sowingSay(growing, facts, { ...first, day: due }),
        why(`Every ${planting.repeat.everyDays} days, so that there is always some at its best.`),
      ],
      because: [
        [
          `Sowing ${sowing}, every ${planting.repeat.everyDays} days from the first, `,
          { day: first.day },
          ".",
        ],
      ],
      grounds: first.grounds,
      needs: ["seed"],
      sets: { planting: planting.key, sowing, act: "start" },
    }),
  ];
}

/** The sowings after the first, at even distances. */
export const REPEAT: Practice = { name: "repeat", pass: "start", tasks };
