import { cm, type Day, earliest, latest, plus } from "../../base/index.ts";
import type { NumberRange } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { killingFrost } from "../climate/frost.ts";
import { groundFreezes } from "../climate/winter-cold.ts";
import type { Basis } from "../growth/anchors.ts";
import { autumnAfter, frozenFrom, nextAnniversary } from "../growth/autumn.ts";
import type { DateDecision } from "../growth/date-decision.ts";
import { isReached, middle } from "../growth/milestones.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { autumnPlantingDay } from "../growth/starting.ts";
import { afterWinter } from "../growth/winter.ts";
import { outdoorGuards, testReasons } from "./date-decision-texts.ts";
import { deed, IN, PLANTED, verb } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { how, lengthRange, type Sentence, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, type Window, window } from "./task.ts";

function autumnPlanting(context: SowingContext): readonly TaskOf<"overwinter">[] {
  const { crop, planting: it } = context;
  const decision = autumnPlantingDay(context);
  const facts = crop.outdoors;
  if (!crop.overwinter || it.start !== "cloves" || it.inSince !== null || !decision || !facts)
    return [];
  const [least, most] = crop.overwinter.plantDaysAfterKillingFrost.value;
  const fixed = it.fixed.start !== null;
  const frost = context.plan.site.firstFrost;
  const killing = frost && killingFrost(frost, context.plan.site.killingFrost);
  return [
    plantingTask(context, "overwinter", "plant", {
      window: fixed
        ? window(decision.day, decision.day, decision.day)
        : plantingWindow(context, decision, Math.floor((most - least) / 2)),
      harm: "this week",
      rhythm: "session",
      minutes: it.amount?.kind === "plants" ? 15 + Math.round(it.amount.count / 2) : 45,
      title: { verb: "Plant", object: objectOf(context), where: "bed" },
      say: [
        how(
          "Break the bulbs the same day. Biggest cloves, point up, ",
          lengthRange(facts.depthCm.value),
          " deep, ",
          lengthRange(facts.apartCm.value),
          " apart, rows ",
          { quantity: cm(facts.rowsCm.value) },
          " apart. Water.",
        ),
        sign(
          byFrost(decision)
            ? "A hard frost has come, and the soil can still be worked."
            : "The heat is over, and nights are the cool ones of autumn.",
        ),
        whyNow(decision, killing),
      ],
      because: testReasons(context, decision, outdoorGuards(context, facts)),
      basis: decision.basis,
      needs: ["seed garlic"],
      certainty: fixed ? "fixed" : "expected",
      sets: { planting: it.key, sowing: context.sowing, act: "start" },
    }),
  ];
}

/** Whether the frosts of the place give the day, and not its cool days. */
const byFrost = ({ basis }: DateDecision) => !basis.includes("cold");

function whyNow({ tests }: DateDecision, killing: Day | null): Sentence {
  const by = (basis: Basis) => tests.some((test) => test.basis === basis);
  if (killing !== null && by("first frost"))
    return why("One to two weeks after the usual killing frost, about ", { day: killing }, ".");
  return by("cold")
    ? why("Cloves want some cool weeks before they make bulbs in spring.")
    : why("You asked for this time.");
}

/** Days that cloves may wait past their usual span. Source: house rule; the soil is open for another week. */
const MAY_WAIT_DAYS = 7;

/** Either side of the day, but never before what the gardener asked for or the place being free, nor past the month she named. */
function plantingWindow(
  context: SowingContext,
  { day, tests }: DateDecision,
  half: number,
): Window {
  const { notBefore, within } = context.planting;
  const free = tests.flatMap((test) => (test.basis === "place free" ? [test.day] : []));
  const first = plus(day, -half);
  const from = latest(first, ...free, notBefore ?? first, within?.from ?? first);
  const to = plus(day, half + MAY_WAIT_DAYS);
  return window(from, day, within ? latest(day, earliest(to, within.to)) : to);
}

function winterTasks(context: SowingContext): readonly TaskOf<"overwinter">[] {
  return [...mulch(context), ...uncovering(context), ...springWeeding(context), ...stalks(context)];
}

function mulch(context: SowingContext): readonly TaskOf<"overwinter">[] {
  const { crop, plan } = context;
  const start = anchorOf(context, "start");
  const frost = plan.site.firstFrost;
  if (!crop.overwinter || !start || !frost || context.planting.inSince !== null) return [];
  if (!groundFreezes(context.climate, seasonOf(plan))) return [];
  const killing = nextAnniversary(
    killingFrost(frost, plan.site.killingFrost),
    plus(start.day, -60),
  );
  const lifted = afterWinter(context, start.day, crop.overwinter.harvestDaysAfterLastFrost.value);
  if (isReached(lifted) && lifted.usual < killing) return [];
  const [least, most] = crop.overwinter.mulchDaysAfterKillingFrost.value;
  const autumn = autumnAfter(context, killing);
  const frozen = autumn && frozenFrom(context, autumn);
  const ahead = frozen === null ? 0 : plus(killing, least) - frozen;
  const sooner = Math.max(0, ahead - LATE_MULCH_DAYS);
  return [
    plantingTask(context, "overwinter", "mulch", {
      window: window(
        plus(killing, least - sooner),
        plus(killing, middle([least, most]) - sooner),
        plus(killing, most + 7 - sooner),
      ),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Mulch", object: objectOf(context), where: "bed" },
      say: [
        how(
          "Lay ",
          lengthRange(crop.overwinter.mulchCm.value),
          " of straw or leaves over the bed.",
        ),
        sign("The top of the soil has frozen."),
        why("Frost heaves bare cloves out of the soil; mulch laid sooner shelters mice."),
      ],
      because:
        frozen !== null && sooner > 0
          ? [["The ground freezes for good from about ", { day: frozen }, "."]]
          : [["Five to seven weeks after the usual killing frost, ", { day: killing }, "."]],
      basis: frozen === null ? ["first frost"] : ["first frost", "cold"],
      needs: ["straw or leaves"],
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** Days that mulch may lie too late on frozen ground; where the soil freezes longer before its time, it is laid then. Source: house rule. */
const LATE_MULCH_DAYS = 7;

/** Days after the last frost at which what stood the winter is weeded. Source: common practice; weeds start before it does. */
const SPRING_WEEDING: NumberRange = [0, 21];

/** The same where the ground does not freeze and weeds grow all winter. Source: common practice, before bulbs begin to grow fast. */
const WINTER_WEEDING: NumberRange = [-56, -28];

/** A job of the spring after planting, so many days from its last frost; none before it is planted, or where there is no frost. */
function inSpring(
  context: SowingContext,
  step: string,
  days: NumberRange,
  { verb, minutes, say }: Pick<TaskOf, "minutes" | "say"> & { readonly verb: string },
): readonly TaskOf<"overwinter">[] {
  const start = anchorOf(context, "start");
  if (!context.crop.overwinter || !start) return [];
  const when = afterWinter(context, start.day, days);
  if (!isReached(when)) return [];
  return [
    plantingTask(context, "overwinter", step, {
      window: window(when.early, when.usual, when.late),
      harm: "when you can",
      rhythm: "session",
      minutes,
      title: { verb, object: objectOf(context), where: "bed" },
      say,
      because: [["Counted from the usual last frost of the spring it stands in."]],
      basis: when.basis,
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** Days before the last frost on which the winter's mulch is drawn off. Source: common practice; hard freezes are over, frosts are not. */
const UNCOVER: NumberRange = [-28, -14];

/** Days between planting and spring with less of a winter than needs a mulch. Source: house rule; three months. */
const A_WINTER_DAYS = 90;

/** Where the ground freezes for weeks it was mulched for that, and the shoots wait under it. */
function uncovering(context: SowingContext): readonly TaskOf<"overwinter">[] {
  const start = anchorOf(context, "start");
  if (!start || !groundFreezes(context.climate, seasonOf(context.plan))) return [];
  const off = afterWinter(context, start.day, UNCOVER);
  if (!isReached(off) || off.usual < plus(start.day, A_WINTER_DAYS)) return [];
  return inSpring(context, "uncover", UNCOVER, {
    verb: "Draw the mulch off",
    minutes: 15,
    say: [
      how(
        "Draw the mulch off the shoots and leave it between the rows, where it keeps weeds down.",
      ),
      sign("The ground has thawed, and the first pale tips come through."),
      why("Shoots under thick mulch stay pale and rot in the wet."),
    ],
  });
}

function springWeeding(context: SowingContext): readonly TaskOf<"overwinter">[] {
  const freezes = groundFreezes(context.climate, seasonOf(context.plan));
  return inSpring(context, "weed", freezes ? SPRING_WEEDING : WINTER_WEEDING, {
    verb: "Weed between",
    minutes: 20,
    say: [
      how(
        freezes
          ? "Pull the weeds by hand, and put back what mulch comes up with them."
          : "Pull the weeds by hand while they are small; in mild winters they never stop growing.",
      ),
      why("Garlic has thin leaves that never shade weeds out."),
    ],
  });
}

function stalks(context: SowingContext): readonly TaskOf<"overwinter">[] {
  const { overwinter } = context.crop;
  if (!overwinter) return [];
  return inSpring(context, "stalks", overwinter.cutStalksDaysAfterLastFrost.value, {
    verb: "Snap … flower stalks off",
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

/** Cloves in for the winter, and what they need between planting and lifting. */
export const OVERWINTER = definePractice({
  name: "overwinter",
  past: {
    whole: "ready for winter",
    plant: "planted",
    mulch: "mulched",
    stalks: "rid of its flower stalks",
  },
  words: ["overwintering", "mulching"],
  begins: "once",
  deeds: [
    deed([...PLANTED, ...IN], { step: "plant", of: { overwinters: true, isNew: true } }),
    deed(verb("mulched"), { step: "mulch", of: { overwinters: true } }),
    deed(
      [
        "(?:cut|snapped|took) (?:the )?(?:stalks|scapes)(?: off| off of| of| from| on)? …",
        "… (?:stalks|scapes) (?:cut|off)",
      ],
      {
        step: "stalks",
        of: { overwinters: true },
      },
    ),
  ],
  tasks: { start: autumnPlanting, rest: winterTasks },
});
