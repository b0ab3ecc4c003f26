import { type Day, latest, plus } from "../../base/index.ts";
import { isTender, type Start } from "../../crops/index.ts";
import { firstFrostAt } from "../climate/frost.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { anchorKey } from "../growth/anchors.ts";
import { autumnAfter, winterOpens } from "../growth/autumn.ts";
import { lastHarvest } from "../growth/ending.ts";
import { nextGoodStart, type Refusal, refusalOf, worthwhileUntil } from "../growth/limits.ts";
import { type RipeBySeason, ripeInSeasons } from "../growth/ripe.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { plantingOutDay, settingOutDay } from "../growth/starting.ts";

/** How a crop goes into a bed: as seed, as plants (raised here or bought), or in the way that the facts name. */
export type StartMethod = "seed" | Exclude<Start, "seed outdoors">;

/**
 * `safe`: ready in time even in a cold season; `a gamble`: in a usual or a warm one; `too late`: in none; `not yet`: it
 * can be started later.
 */
export type Verdict = "safe" | "a gamble" | "too late" | "not yet";

/**
 * What ends a crop's time: the frost that kills it, the hard frost before which hardy crops are brought in, or too
 * little light under glass.
 */
export type SeasonEnd = { readonly by: "frost" | "hard frost" | "short days"; readonly day: Day };

/**
 * The outcome of a start on a day: the worst season in which it is ready in time, when it is ready in each, and what
 * ends or spoils it.
 */
export type StartOutcome = {
  readonly inTime: "any" | "usual" | "warm" | "none";
  readonly ripe: RipeBySeason | null;
  readonly end: SeasonEnd | null;
  readonly why: Refusal | null;
};

/** The answer for a start: its outcome is that of the day asked, or of `opens`, the first good day, where it is not yet time. */
export type StartChance = StartOutcome & { readonly verdict: Verdict; readonly opens: Day | null };

/** The chance of a crop that is started in one way on a day; null where the facts do not have that way. */
export function chanceOf(context: SowingContext, day: Day): StartChance | null {
  const first = opensOn(context);
  if (first === null) return null;
  const from = latest(day, first);
  const outcome = outcomeOn(context, from);
  if (outcome.why !== null && isSpoilt(outcome.why)) return later(context, from, outcome.why);
  if (outcome.inTime === "none") return forWinter(context, from) ?? tooLate(outcome);
  const inTime = outcome.inTime === "any" && isHeldOut(context) ? "usual" : outcome.inTime;
  if (from > day) return { ...outcome, inTime, verdict: "not yet", opens: from };
  return { ...outcome, inTime, verdict: inTime === "any" ? "safe" : "a gamble", opens: null };
}

/** Whether in a cold season plants would go out in soil still too cold for them, so that the season is not over first. */
function isHeldOut(context: SowingContext): boolean {
  const out = context.planting.start === "plants" ? settingOutDay(context) : null;
  return out !== null && out.stop !== null && (out.stopped || out.late >= out.stop);
}

const tooLate = (outcome: StartOutcome): StartChance => ({
  ...outcome,
  verdict: "too late",
  opens: null,
});

/** What is too late for this year, and may be sown for the winter later in autumn; null where it may not. */
function forWinter(context: SowingContext, day: Day): StartChance | null {
  const opens = winterOpens(context, day);
  if (opens === null || opens <= day) return null;
  const then = outcomeOn(context, opens);
  return then.inTime === "none" ? null : { ...then, verdict: "not yet", opens };
}

/** The day from which frost and soil allow a start, calculated as for the plan's own sowings. */
function opensOn(context: SowingContext): Day | null {
  const { crop, planting } = context;
  if (planting.start === "plants") return settingOutDay(context)?.day ?? null;
  return crop.outdoors && plantingOutDay(context, crop.outdoors).day;
}

const isSpoilt = (why: Refusal) => why !== "too late" && why !== "never up";

/** A start that heat, long days or cold would spoil waits for the first day on which they do not. */
function later(context: SowingContext, from: Day, why: Refusal): StartChance {
  const opens = nextGoodStart(context, from);
  const then = opens === null ? null : outcomeOn(context, opens);
  if (then && then.inTime !== "none") return { ...then, verdict: "not yet", opens, why };
  return { inTime: "none", ripe: null, end: null, verdict: "too late", opens: null, why };
}

function outcomeOn(context: SowingContext, day: Day): StartOutcome {
  const end = endOf(context, day);
  const why = refusalOf(context, day);
  const none = { inTime: "none", ripe: null, end, why: why ?? "never up" } as const;
  if (why !== null && isSpoilt(why)) return none;
  const ripe = ripeInSeasons(startedOn(context, day));
  if ("none" in ripe) return none;
  const inTime = worstSeason(context, ripe, { end, atRisk: endAtRisk(context, day, end) });
  return { inTime, ripe, end, why: inTime === "none" ? (why ?? "too late") : null };
}

type Ends = { readonly end: SeasonEnd | null; readonly atRisk: Day | null };

function worstSeason(
  context: SowingContext,
  { warm, usual, cold }: RipeBySeason,
  { end, atRisk }: Ends,
): StartOutcome["inTime"] {
  const isBy = (ripe: Day | null, by: Day | null) =>
    ripe !== null && (by === null || worthwhileUntil(context, ripe) <= by);
  const last = end?.day ?? null;
  if (isBy(usual, last)) return isBy(cold, atRisk) && isBy(cold, last) ? "any" : "usual";
  return isBy(warm, last) ? "warm" : "none";
}

function endOf(context: SowingContext, day: Day): SeasonEnd | null {
  const last = lastHarvest(context, day);
  if (last === null) return null;
  if (context.climate.underGlass && autumnAfter(context, day)?.usual !== last)
    return { by: "short days", day: last };
  return { by: isTender(context.crop) ? "frost" : "hard frost", day: last };
}

/** For tender crops the first frost at the garden's risk for seed or plants; for the rest the usual end. */
function endAtRisk(context: SowingContext, day: Day, end: SeasonEnd | null): Day | null {
  const { site, risk } = context.plan;
  const { firstFrost } = frostsAt(site, context.bed);
  const autumn = autumnAfter(context, day);
  if (end?.by !== "frost" || !firstFrost || !autumn) return end?.day ?? null;
  const share = context.planting.start === "plants" ? risk.raised : risk.seed;
  return plus(firstFrostAt(firstFrost, share), autumn.usual - firstFrost.usual);
}

/** The same planting as it would be if it were sown, planted or set out that day. */
export function startedOn(context: SowingContext, day: Day): SowingContext {
  const { planting, sowing } = context;
  const act = planting.start === "plants" ? "set out" : "start";
  const anchor = { day, from: "given", basis: ["given"], task: null } as const;
  return { ...context, anchors: new Map([[anchorKey(planting.key, sowing, act), anchor]]) };
}
