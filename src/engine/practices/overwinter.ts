import { earliest, latest, plus } from "../../base/days/day.ts";
import { cm } from "../../base/quantities/quantity.ts";
import type { Range } from "../../crops/facts.ts";
import { killingFrost } from "../climate/frost.ts";
import { anchorOf, type Growing } from "../growth/growing.ts";
import { middle, reached } from "../growth/milestones.ts";
import type { Reckoned } from "../growth/reckoned.ts";
import { autumnPlantingDay } from "../growth/starting.ts";
import { afterWinter, nextYearly } from "../growth/winter.ts";
import type { Practice } from "./practice.ts";
import { outdoorGuards, testsTold } from "./reckoning.ts";
import { how, lengths, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, type Window, window } from "./task.ts";

function planting(growing: Growing): readonly Task[] {
  const { crop, planting: it } = growing;
  const reckoned = autumnPlantingDay(growing);
  const facts = crop.outdoors;
  if (!crop.overwinter || it.start !== "cloves" || it.inSince !== null || !reckoned || !facts)
    return [];
  const [least, most] = crop.overwinter.plantDaysAfterKillingFrost.value;
  const fixed = it.fixed.start !== null;
  const killing = growing.plan.site.firstFrost
    ? killingFrost(growing.plan.site.firstFrost, growing.plan.site.killingFrost)
    : reckoned.day;
  return [
    plantingTask(growing, "overwinter", "plant", {
      window: fixed
        ? window(reckoned.day, reckoned.day, reckoned.day)
        : plantingWindow(growing, reckoned, Math.floor((most - least) / 2)),
      harm: "this week",
      rhythm: "session",
      minutes: it.amount?.kind === "plants" ? 15 + Math.round(it.amount.count / 2) : 45,
      title: { verb: "Plant", object: objectOf(growing), where: "bed" },
      say: [
        how(
          "Break the bulbs the same day. Biggest cloves, point up, ",
          lengths(facts.depthCm.value),
          " deep, ",
          lengths(facts.apartCm.value),
          " apart, rows ",
          { quantity: cm(facts.rowsCm.value) },
          " apart. Water.",
        ),
        sign("A hard frost has come, and the soil can still be worked."),
        fixed || !reckoned.tests.some((test) => test.ground === "first frost")
          ? why("The plan asks for this time.")
          : why("One to two weeks after the usual killing frost, about ", { day: killing }, "."),
      ],
      because: () => testsTold(growing, reckoned, outdoorGuards(growing, facts)),
      grounds: reckoned.grounds,
      needs: ["seed garlic"],
      certainty: fixed ? "fixed" : "expected",
      sets: { planting: it.key, sowing: growing.sowing, act: "start" },
    }),
  ];
}

/** Days that cloves may wait past their usual span. Source: house rule; the soil is open for another week. */
const MAY_WAIT_DAYS = 7;

/** Either side of the day, but never before what the gardener asked for or the place being free, nor past the month she named. */
function plantingWindow(growing: Growing, { day, tests }: Reckoned, half: number): Window {
  const { notBefore, within } = growing.planting;
  const free = tests.flatMap((test) => (test.ground === "place free" ? [test.day] : []));
  const first = plus(day, -half);
  const from = latest(first, ...free, notBefore ?? first, within?.from ?? first);
  const to = plus(day, half + MAY_WAIT_DAYS);
  return window(from, day, within ? latest(day, earliest(to, within.to)) : to);
}

/** Cloves set in autumn, once the killing frost is usually past. */
export const PLANT_FOR_WINTER: Practice = { name: "overwinter", pass: "start", tasks: planting };

function standing(growing: Growing): readonly Task[] {
  return [...mulch(growing), ...springWeeding(growing), ...stalks(growing)];
}

function mulch(growing: Growing): readonly Task[] {
  const { crop, plan } = growing;
  const start = anchorOf(growing, "start");
  const frost = plan.site.firstFrost;
  if (!crop.overwinter || !start || !frost || growing.planting.inSince !== null) return [];
  const killing = nextYearly(killingFrost(frost, plan.site.killingFrost), plus(start.day, -60));
  const lifted = afterWinter(growing, start.day, crop.overwinter.harvestDaysAfterLastFrost.value);
  if (reached(lifted) && lifted.usual < killing) return [];
  const [least, most] = crop.overwinter.mulchDaysAfterKillingFrost.value;
  return [
    plantingTask(growing, "overwinter", "mulch", {
      window: window(
        plus(killing, least),
        plus(killing, middle([least, most])),
        plus(killing, most + 7),
      ),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Mulch", object: objectOf(growing), where: "bed" },
      say: [
        how("Lay ", lengths(crop.overwinter.mulchCm.value), " of straw or leaves over the bed."),
        sign("The top of the soil has frozen."),
        why("It keeps the cloves from being heaved out; laid earlier, it keeps mice warm."),
      ],
      because: () => [
        ["Five to seven weeks after the usual killing frost, ", { day: killing }, "."],
      ],
      grounds: ["first frost"],
      needs: ["straw or leaves"],
      hangsOn: tasksBehind(growing, "start"),
    }),
  ];
}

/** Days after the last frost at which what stood the winter is weeded. Source: common practice; weeds start before it does. */
const SPRING_WEEDING: Range = [0, 21];

/** A job of the spring after planting, so many days from its last frost; none before it is planted, or where there is no frost. */
function inSpring(
  growing: Growing,
  step: string,
  days: Range,
  { verb, minutes, say }: Pick<Task, "minutes" | "say"> & { readonly verb: string },
): readonly Task[] {
  const start = anchorOf(growing, "start");
  if (!growing.crop.overwinter || !start) return [];
  const when = afterWinter(growing, start.day, days);
  if (!reached(when)) return [];
  return [
    plantingTask(growing, "overwinter", step, {
      window: window(when.early, when.usual, when.late),
      harm: "when you can",
      rhythm: "session",
      minutes,
      title: { verb, object: objectOf(growing), where: "bed" },
      say,
      because: () => [["Counted from the usual last frost of the spring it stands in."]],
      grounds: when.grounds,
      hangsOn: tasksBehind(growing, "start"),
    }),
  ];
}

function springWeeding(growing: Growing): readonly Task[] {
  return inSpring(growing, "weed", SPRING_WEEDING, {
    verb: "Weed between",
    minutes: 20,
    say: [
      how("Draw the mulch aside where it lies thick, pull the weeds by hand, and put it back."),
      why("Its thin leaves never shade weeds out."),
    ],
  });
}

function stalks(growing: Growing): readonly Task[] {
  const { overwinter } = growing.crop;
  if (!overwinter) return [];
  return inSpring(growing, "stalks", overwinter.cutStalksDaysAfterLastFrost.value, {
    verb: "Snap off flower stalks:",
    minutes: 10,
    say: [
      how(
        "Snap or cut each stalk where it leaves the leaves; they are good to eat. Soft kinds have none.",
      ),
      sign("The stalks have curled once."),
      why("The bulbs grow bigger without them."),
    ],
  });
}

/** What it needs between planting and lifting. */
export const STAND_THE_WINTER: Practice = { name: "overwinter", pass: "rest", tasks: standing };
