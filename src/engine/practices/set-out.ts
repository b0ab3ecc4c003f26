import { cm, type Day, earliest, latest, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { isRaised } from "../../garden/model/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import type { DateDecision } from "../growth/date-decision.ts";
import { isReached } from "../growth/milestones.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { settingOutDay } from "../growth/starting.ts";
import { stopDay } from "../growth/stopping.ts";
import { upMilestone } from "../growth/up.ts";
import { regionOf } from "../rules/regions.ts";
import { piecesOf } from "./care.ts";
import { type Guards, settingOutGuards, testReasons, whyDecided } from "./date-decision-texts.ts";
import { deed, IN, PLANTED, RAISED, verb } from "./deeds.ts";
import {
  HELD_UP,
  type HoldReason,
  hardeningLadder,
  holdSettingOut,
  ladderOf,
  NIGHTS,
  WHOLE_DAYS,
} from "./ladder.ts";
import { definePractice } from "./practice.ts";
import { caution, householdOnly, how, type Sentence, sign, why } from "./sentence.ts";
import {
  anchorTaskIds,
  objectOf,
  plantingTask,
  plantingTaskId,
  type TaskOf,
  window,
} from "./task.ts";

/** Days that hardened plants may wait for their bed. Source: common practice; pots dry out and roots circle. */
const MAY_WAIT_DAYS = 10;

/** The kind of work that setting out is where a ladder of hardening off stands before it. */
const HARDENED = "hardened off";

/** Plants whose setting out lies within so many days of each other share one ladder and one day. Source: house rule. */
export const SHARE_WITHIN_DAYS = 4;

/** Days after they are up by which plants from winter boxes fill their place there. Source: common practice, two pairs of leaves. */
const BOXED_DAYS = 28;

/** When raised plants are old enough; null for bought ones, and where they don't come up. */
function readyDay(context: SowingContext, sown: Day): Day | null {
  const { planting, crop } = context;
  if (planting.start === "winter-sown") {
    const up = upMilestone(context);
    return isReached(up) && planting.fixed.out === null ? plus(up.usual, BOXED_DAYS) : null;
  }
  if (planting.start !== "seed indoors" || !crop.indoors) return null;
  return plus(sown, crop.indoors.weeksToSettingOut.value[0] * 7);
}

/** The weather's day, or the day the plants themselves are old enough, whichever is later. */
function oldEnough(context: SowingContext, out: DateDecision): DateDecision {
  const start = anchorOf(context, "start");
  const ready = start && readyDay(context, start.day);
  if (!start || ready === null) return out;
  return {
    ...out,
    day: latest(out.day, ready),
    tests: [...out.tests, { basis: "age", day: ready }],
    basis: combineBasis(out.basis, start.basis, ["age"]),
    stopped: out.stopped && ready <= out.day,
  };
}

function reason(context: SowingContext, out: DateDecision, guards: Guards): Sentence {
  const age = out.tests.find((test) => test.basis === "age");
  if (
    age &&
    age.day === out.day &&
    out.tests.every((test) => test.basis === "age" || test.day < age.day)
  )
    return why("They are only now old enough.");
  return whyDecided(context, out, guards);
}

/** Ten days on, but not past the day that would end a hold. */
function lastDay(context: SowingContext, out: DateDecision): Day {
  const day = plus(out.day, MAY_WAIT_DAYS);
  if (out.stop === null || day <= out.stop) return day;
  return latest(out.day, earliest(day, stopDay(context, out.stop)));
}

/** The most days from one day out to the next that plants stay hardened. Source: house rule; a weekend away does no harm. */
const STAYS_HARDENED_DAYS = 3;

/** Whether somebody is about throughout the ladder before a day, but for a weekend. */
function canHarden({ planting, crop, around }: SowingContext, setOut: Day): boolean {
  const days = planting.hardenDays ?? crop.indoors?.hardenDays.value ?? 0;
  const rungs = hardeningLadder(setOut, Math.max(WHOLE_DAYS + NIGHTS, days), around);
  return rungs.every(({ day }, i) => (rungs[i + 1]?.day ?? setOut) - day <= STAYS_HARDENED_DAYS);
}

/** The first day from the one on which they may go out that has somebody about to harden them off before it, and does no harm yet; else that day. */
function hardenedBy(context: SowingContext, day: Day, last: Day): Day {
  for (let later = day; later <= last; later = plus(later, 1))
    if (canHarden(context, later)) return later;
  return day;
}

/** The day on which they go out by the forecast: once hardened off, and not into cold or wind that is known ahead; `last` at the latest. */
function heldBack(
  context: SowingContext,
  from: Day,
  last: Day,
): { readonly day: Day; readonly why: HoldReason | "hardening" | null } {
  const { planting, crop, soFar } = context;
  if (soFar === null || crop.indoors === null) return { day: from, why: null };
  const { hardenDays, nightFloorC } = crop.indoors;
  const hardens = planting.start === "seed indoors";
  const days = Math.max(WHOLE_DAYS + NIGHTS, planting.hardenDays ?? hardenDays.value);
  const parts = { setOut: from, days, floorC: nightFloorC.value, by: last };
  const hardened = hardens ? latest(from, ladderOf(context, parts).doneBy) : from;
  const told = soFar.toldOn(plantingTaskId(context, "set out", "1"));
  // What is still to come can't be in days that are over.
  const today = told !== null && told >= soFar.asOf ? soFar.asOf : from;
  let day = earliest(last, latest(hardened, today));
  let why: HoldReason | "hardening" | null = hardened > from ? "hardening" : null;
  for (
    let hold = holdSettingOut(context, day);
    hold !== null;
    hold = holdSettingOut(context, day)
  ) {
    why = hold;
    if (day >= last) break;
    day = plus(day, 1);
  }
  return { day, why };
}

/** Why the forecast holds them back, and what is to be done where they can wait no longer. */
function heldBackSentences(
  { day, why: held }: ReturnType<typeof heldBack>,
  last: Day,
): readonly Sentence[] {
  if (held === null) return [];
  if (held !== "hardening" && day >= last)
    return [
      caution(`The nights ahead are ${held}, and they can wait no longer: plant under hoops.`),
    ];
  return [
    held === "hardening"
      ? why("Cold or windy days held up their hardening off.")
      : why(`Not sooner: the forecast is too ${held}.`),
  ];
}

function tasks(context: SowingContext): readonly TaskOf<"set out">[] {
  const { planting, crop } = context;
  const facts = crop.settingOut;
  const weather = settingOutDay(context);
  const raised = isRaised(planting.start);
  if (!raised || planting.inSince !== null || !facts || !weather) return [];
  if (planting.start !== "plants" && !anchorOf(context, "start")) return [];
  const out = oldEnough(context, weather);
  const guards = settingOutGuards(context, facts);
  const fixed = planting.fixed.out !== null;
  const hoops = out.stopped
    ? [
        caution(
          "The soil is cold still: plant under hoops and fleece, and keep both on until nights are mild.",
        ),
      ]
    : [];
  const open = isTender(crop) && !context.climate.underGlass;
  const hardens = open && planting.start === "seed indoors";
  const last = fixed ? out.day : lastDay(context, out);
  const whole = hardens && !fixed ? hardenedBy(context, out.day, last) : out.day;
  const held = open && !fixed ? heldBack(context, whole, last) : { day: whole, why: null };
  const { day } = held;
  const moved =
    whole === out.day
      ? []
      : [householdOnly(why("Not sooner, because nobody is there to harden them off."))];
  const bought = open && planting.start === "plants";
  const glass = bought
    ? [
        caution(
          `Get ${objectOf(context)} from under glass used to the open first, for a week or so.`,
        ),
      ]
    : [];
  return [
    plantingTask(context, "set out", "1", {
      window: window(day, day, last),
      harm: "this week",
      rhythm: "session",
      minutes: planting.amount?.kind === "plants" ? 10 + 3 * planting.amount.count : 45,
      kinds: [...(hardens ? [HARDENED] : []), ...(held.why === null ? [] : [HELD_UP])],
      title: { verb: "Set out", object: objectOf(context), where: "bed" },
      say: [
        ...(crop.support?.first ? [how(crop.support.first)] : []),
        ...(context.bed?.warmed && isTender(crop)
          ? [how("Cut a cross in the film for each.")]
          : []),
        how(
          "Set them ",
          { quantity: cm(facts.apartCm.value) },
          " apart. ",
          ...piecesOf(facts.how, regionOf(context.plan.site)),
        ),
        sign("A grey day or late afternoon, and a handful of soil crumbles."),
        reason(context, out, guards),
        ...moved,
        ...heldBackSentences(held, last),
        ...hoops,
        ...glass,
      ],
      because: testReasons(context, out, guards),
      basis: out.basis,
      needs: [...facts.things, ...(crop.support?.things ?? [])],
      hangsOn: anchorTaskIds(context, "start"),
      certainty: fixed ? "fixed" : "expected",
      sets: { planting: planting.key, sowing: context.sowing, act: "set out" },
    }),
  ];
}

/**
 * Gives tender plants whose setting out falls within SHARE_WITHIN_DAYS of each other one day, the latest of
 * theirs. Days the gardener fixed stay, and none is held past the last day that does it no harm. Other tasks
 * come back as they were; the order is kept.
 */
export function shareLadders<Job extends TaskOf>(tasks: readonly Job[]): readonly Job[] {
  const mine = tasks
    .filter((task) => task.kinds.includes(HARDENED) && task.certainty === "expected")
    .sort((a, b) => a.window.due - b.window.due || (a.id < b.id ? -1 : 1));
  const shared = new Map<string, Job>();
  let ladder: Job[] = [];
  const close = () => {
    const due = latest(...ladder.map((task) => task.window.due));
    const lead = ladder[0]?.id ?? "";
    if (ladder.length > 1)
      for (const task of ladder)
        shared.set(task.id, {
          ...task,
          together: lead,
          window: { ...task.window, earliest: due, due },
          basis: combineBasis(...ladder.map((each) => each.basis)),
        });
    ladder = [];
  };
  for (const task of mine) {
    const first = ladder[0];
    const far = first && task.window.due - first.window.due > SHARE_WITHIN_DAYS;
    const late = ladder.some((each) => each.window.latest < task.window.due);
    if (far || late) close();
    ladder.push(task);
  }
  if (ladder.length > 0) close();
  return tasks.map((task) => shared.get(task.id) ?? task);
}

/** Raised plants into their bed, with everything that belongs to that hour. */
export const SETTING_OUT = definePractice({
  name: "set out",
  past: { whole: "set out" },
  words: ["setting out", "planting out", "plant out", "transplanting"],
  deeds: [
    deed(
      [
        ...verb(
          "(?:set|planted|put|bedded) out|transplanted",
          "(?:set|planted|put|gone|went|bedded) out|transplanted|out|outside",
        ),
        "set|planted|put|got|moved … out|outside",
        "… (?:i |we )?(?:put|planted) outside",
        "… plants (?:are )?in",
      ],
      { of: { begun: RAISED, isNew: true, forHours: false } },
    ),
    deed(PLANTED, { of: { begun: RAISED, overwinters: false, isNew: true } }),
    deed(IN, { of: { begun: RAISED, overwinters: false, isNew: true, whenOut: true } }),
  ],
  answers: { done: "Out today", notYet: "Too cold yet" },
  tasks: { "set out": tasks },
});
