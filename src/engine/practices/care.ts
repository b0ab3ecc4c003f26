import { capital, type Day, degreesC, plus } from "../../base/index.ts";
import type { Care, CarePractice, MeasuredText, Region } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { groundFreezes } from "../climate/winter-cold.ts";
import { combineBasis } from "../growth/anchors.ts";
import { springAfter } from "../growth/autumn.ts";
import { hasCoolSeason } from "../growth/cool-season.ts";
import { isCured } from "../growth/ending.ts";
import { flowerMilestone } from "../growth/flower.ts";
import {
  isReached,
  type Milestone,
  middle,
  milestoneOn,
  type ReachedMilestone,
} from "../growth/milestones.ts";
import { summersOf } from "../growth/perennial.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { takenUnripe } from "../growth/ripening.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { growsOnFrom, winterEndOf } from "../growth/through-winter.ts";
import { glassEnd } from "../growth/under-glass.ts";
import { upMilestone } from "../growth/up.ts";
import { regionOf } from "../rules/regions.ts";
import { blightWatch } from "./blight.ts";
import { deed, verb } from "./deeds.ts";
import { GLASS_LOOK, GLASS_STOP } from "./glass-look.ts";
import { definePractice } from "./practice.ts";
import { caution, how, lengthRange, sign, type TextPiece, why } from "./sentence.ts";
import { sourcePieces } from "./source-pieces.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Days past its span that a job may wait, by what is lost. Source: house rule. */
const MAY_WAIT_DAYS = { "this week": 4, "when you can": 10 } as const;

/** The stage a job is counted from; none where the planting does not reach it. */
function stageOf(context: SowingContext, from: Care["from"]): Milestone {
  const { lastFrost, firstFrost } = frostsAt(context.plan.site, context.bed);
  const { underGlass } = context.climate;
  const on = (day: Day | undefined, basis: "last frost" | "first frost"): Milestone =>
    day === undefined ? { none: "there is no frost" } : milestoneOn(day, [basis]);
  switch (from) {
    case "in place": {
      const grown = growsOnFrom(context);
      if (grown !== null) return milestoneOn(grown, ["last frost"]);
      const anchor = inPlace(context);
      return anchor && context.planting.inSince === null
        ? milestoneOn(anchor.day, anchor.basis)
        : { none: "it is not in its place this season" };
    }
    case "up":
      return grownOn(context, upMilestone(context));
    case "flower":
      return flowerMilestone(context);
    case "first harvest":
      return broughtIn(context);
    case "last frost":
      if (!lastFrost && context.crop.perennial)
        return milestoneOn(springAfter(context, seasonOf(context.plan).from), ["time of year"]);
      return on(lastFrost?.usual, "last frost");
    case "first frost":
      return on(underGlass ? glassEnd(context)?.day : firstFrost?.usual, "first frost");
  }
}

/** When its harvest begins: as it is ripe, or, of what is dried to keep, as it is lifted before frost. */
function broughtIn(context: SowingContext): Milestone {
  const day = isCured(context) ? takenUnripe(context) : null;
  return day === null ? ripeMilestone(context) : milestoneOn(day, ["first frost"]);
}

/** What lives through the winter young stands still in it: a stage before that counts from when it grows on. */
function grownOn(context: SowingContext, stage: Milestone): Milestone {
  const from = growsOnFrom(context);
  if (from === null || !isReached(stage) || stage.usual >= from) return stage;
  return milestoneOn(from, combineBasis(stage.basis, ["last frost"]));
}

/** A crop fact's text as a sentence's pieces, in a region's words; lengths [cm] and temperatures [°C] get the household's units later. */
export function piecesOf(text: MeasuredText, region: Region): readonly TextPiece[] {
  if (typeof text === "string") return [text];
  return text.map((piece) => {
    if (typeof piece === "string") return piece;
    if ("regional" in piece) return piece.regional[region] ?? piece.regional.otherwise;
    return "cm" in piece ? lengthRange(piece.cm) : { quantity: degreesC(piece.tempC) };
  });
}

/** A crop's own list, with the pests of glass in place of those that fly in the open. */
function careOf({ crop, climate }: SowingContext): readonly Care[] {
  if (!climate.underGlass) return crop.care;
  return crop.care.map((care) => {
    if (care.practice === "scout") return { ...care, ...GLASS_LOOK };
    return care.practice === "stop the tops" && care.from === "first frost"
      ? { ...care, ...GLASS_STOP }
      : care;
  });
}

/** What a crop's own list has under a practice, each once, on the first sowing; none before it is in its place. */
export function careTasks<Name extends CarePractice>(
  context: SowingContext,
  practice: Name,
): readonly TaskOf<Name>[] {
  if (context.sowing > 1) return [];
  const wanted = careOf(context).filter((care) => care.practice === practice);
  const anchor = wanted.length === 0 ? null : inPlace(context);
  if (!anchor) return [];
  return wanted.flatMap((care) => {
    if (!applies(context, care)) return [];
    const stage = stageOf(context, care.from);
    if (!isReached(stage)) return [];
    const due = plus(stage.usual, middle(care.days.value));
    if (care.standsDays && !stillStands(context, due, care.standsDays.value)) return [];
    if (practice === "stop the tops" && isBroughtIn(context, due)) return [];
    return due < anchor.day ? [] : [careTask(context, practice, { care, stage })];
  });
}

/** Whether it is cut once and ripe by a day, so that nothing is left to ripen sooner. */
function isBroughtIn(context: SowingContext, day: Day): boolean {
  const ripe = ripeMilestone(context);
  return context.crop.harvest.kind === "once" && isReached(ripe) && ripe.usual <= day;
}

/** Whether its pest lives here, the crop bears already, and the winters are such as it is for. */
function applies(context: SowingContext, { regions, only }: Care): boolean {
  const { plan, crop, climate } = context;
  if (regions && !climate.underGlass && !regions.includes(regionOf(plan.site))) return false;
  const bears = () => summersOf(context) >= (crop.perennial?.firstHarvestYear.value ?? 1);
  if (only?.includes("bearing") && !bears()) return false;
  if (only?.includes("hot summer") && !hasCoolSeason(context)) return false;
  return !only?.includes("frozen ground") || groundFreezes(climate, seasonOf(plan));
}

/** Whether it is ripe by a day, became so at most so many days before, nothing else grows in its place, and no winter harvest brings it in. */
function stillStands(context: SowingContext, day: Day, days: number): boolean {
  const ripe = ripeMilestone(context);
  const { plan, planting } = context;
  const followed = plan.plantings.some(({ after }) => after === planting.key);
  if (!isReached(ripe) || followed || winterEndOf(context, ripe.usual) !== null) return false;
  return ripe.early <= day && plus(ripe.usual, days) >= day;
}

/** The day on which what still stands in its bed is brought in before hard frost; null where nothing does. */
export function standsUntil(context: SowingContext): Day | null {
  for (const care of context.sowing > 1 ? [] : context.crop.care) {
    const stage = care.standsDays && applies(context, care) ? stageOf(context, care.from) : null;
    if (!stage || !care.standsDays || !isReached(stage)) continue;
    const due = plus(stage.usual, middle(care.days.value));
    if (stillStands(context, due, care.standsDays.value)) return due;
  }
  return null;
}

type DueCare = { readonly care: Care; readonly stage: ReachedMilestone };

function careTask<Name extends CarePractice>(
  context: SowingContext,
  practice: Name,
  { care, stage }: DueCare,
): TaskOf<Name> {
  const [least, most] = care.days.value;
  const day = (days: number) => plus(stage.usual, days);
  const region = regionOf(context.plan.site);
  return plantingTask(context, practice, care.step, {
    window: window(day(least), day(middle(care.days.value)), day(most + MAY_WAIT_DAYS[care.harm])),
    harm: care.harm,
    rhythm: "session",
    minutes: care.minutes,
    title: { verb: care.verb, object: objectOf(context), where: "bed" },
    say: [
      how(...piecesOf(care.how, region)),
      ...(care.sign === null ? [] : [sign(...piecesOf(care.sign, region))]),
      why(...piecesOf(care.why, region)),
      ...(care.caution === null ? [] : [caution(...piecesOf(care.caution, region))]),
    ],
    because: [
      [
        `Counted from ${stage.basis[0] === "time of year" ? "spring" : STAGES[care.from]}, `,
        { day: stage.usual },
        ".",
      ],
      [...begun(sourcePieces(care.days.source)), "."],
    ],
    basis: stage.basis,
    needs: care.needs,
    hangsOn: anchorTaskIds(context, "start", "set out"),
  });
}

const STAGES: Readonly<Record<Care["from"], string>> = {
  "in place": "the day it is in its place",
  up: "when it is up",
  flower: "its first flowers",
  "first harvest": "its first harvest",
  "last frost": "the usual last frost",
  "first frost": "the usual first frost",
};

/** Growing tips taken out, so that what has set gets ready. */
export const STOP_THE_TOPS = definePractice({
  name: "stop the tops",
  past: { whole: "stopped at its tops" },
  words: ["pinching", "pinching out", "pinching tips", "topping", "stopping", "stopping the tops"],
  deeds: [
    deed([
      "(?:pinched|nipped|took) (?:out )?(?:the )?(?:tops|tips|growing tips)(?: out| off)?(?: of| off| from| on)? …",
      ...verb("stopped|topped|pinched(?: out)?"),
      "… (?:tops|tips) (?:removed|pinched(?: out)?)",
    ]),
  ],
  tasks: { rest: (context) => careTasks(context, "stop the tops") },
});

/** Trenches filled in, and stems kept from the light. */
export const FILL_IN_AND_BLANCH = definePractice({
  name: "fill in and blanch",
  past: { whole: "blanched" },
  words: ["filling in", "blanch", "blanching"],
  deeds: [deed(verb("blanched|filled in"))],
  thingsFor: "blanching",
  tasks: { rest: (context) => careTasks(context, "fill in and blanch") },
});

/** A look for pests at the time they come. */
export const SCOUT = definePractice({
  name: "scout",
  past: { whole: "looked over for pests" },
  words: ["scouting", "looking for pests", "pest checks"],
  deeds: [deed(verb("scouted|checked|looked over"))],
  thingsFor: "checking leaves",
  tasks: { rest: (context) => [...careTasks(context, "scout"), ...blightWatch(context)] },
});

/** What makes a harvest keep. */
export const CURE_AND_STORE = definePractice({
  name: "cure and store",
  past: { whole: "cured and stored" },
  words: ["cure", "curing", "store", "storing", "storage", "curing and storing"],
  deeds: [
    deed([
      ...verb(
        "cured|stored|hung(?: up)?|plaited|braided|canned|bottled|pickled|strung(?: up)?|clamped",
      ),
      "… (?:curing|drying)",
      "(?:the )?(?:cellar|store|freezer|larder|pantry) (?:is )?full of …",
      "… (?:in store|in the clamp|in sand|in the cellar|in the root cellar|in the loft|in the freezer|in the pantry|in the larder|hanging(?: up| from the beam)?|hung(?: up)?|plaited|braided)",
    ]),
  ],
  thingsFor: "storing",
  tasks: { rest: (context) => careTasks(context, "cure and store") },
});

/** What a crop that stands for years needs each year. */
export const YEARLY = definePractice({
  name: "yearly",
  past: { whole: "given its yearly care", prune: "pruned" },
  words: ["yearly care", "yearly work", "renovating", "renovation"],
  deeds: [
    deed([...verb("pruned"), "gave … (?:the chop|a prune|a pruning)"], { step: "prune" }),
    deed([
      ...verb("renovated|cut back|cut down", "renovated|cut back|cut down|cut to (?:the )?ground"),
      "did the yearly (?:care|work) (?:of|for|on) …",
    ]),
  ],
  thingsFor: "fruit and perennials",
  tasks: { rest: (context) => careTasks(context, "yearly") },
});

/** The same pieces as the beginning of a sentence. */
const begun = ([first = "", ...rest]: readonly TextPiece[]): readonly TextPiece[] => [
  typeof first === "string" ? capital(first) : first,
  ...rest,
];
