import { type Day, latest, plus } from "../../base/days/day.ts";
import { isTender } from "../../crops/crops.ts";
import type { Start } from "../../crops/facts.ts";
import { firstFrostAt } from "../climate/frost.ts";
import { anchorKey } from "../growth/anchors.ts";
import { autumnAfter, lastHarvest } from "../growth/ending.ts";
import type { Growing } from "../growth/growing.ts";
import { nextGood, type Refusal, refusalOf, worthTill } from "../growth/limits.ts";
import { type InSeasons, ripeInSeasons } from "../growth/ripe.ts";
import { plantingOutDay, settingOutDay } from "../growth/starting.ts";

/** How a crop goes into a bed: as seed, as plants whoever raised them, or as the facts call it. */
export type Way = "seed" | Exclude<Start, "seed outdoors">;

/** `safe`: even a cold season brings it in time; `a gamble`: a usual or a warm one; `too late`: none; `not yet`: its days are to come. */
export type Verdict = "safe" | "a gamble" | "too late" | "not yet";

/** What ends a crop's time: the frost that kills it, the hard frost after which what stands frost is brought in, or too little light under glass. */
export type End = { readonly by: "frost" | "hard frost" | "short days"; readonly day: Day };

/** What a start on a day comes to: the worst season that brings it in time, when it is ready in each, and what ends it or spoils it. */
export type Outcome = {
  readonly inTime: "any" | "usual" | "warm" | "none";
  readonly ripe: InSeasons | null;
  readonly end: End | null;
  readonly why: Refusal | null;
};

/** The answer for a start: its outcome is that of the day asked, or of `opens`, the first good day, where it is not yet time. */
export type Answer = Outcome & { readonly verdict: Verdict; readonly opens: Day | null };

/** What a crop comes to that is started in one way on a day; null where the facts do not say how it begins so. */
export function chanceOf(growing: Growing, day: Day): Answer | null {
  const first = opensOn(growing);
  if (first === null) return null;
  const from = latest(day, first);
  const outcome = outcomeOn(growing, from);
  if (outcome.why !== null && isSpoilt(outcome.why)) return later(growing, from, outcome.why);
  if (outcome.inTime === "none") return { ...outcome, verdict: "too late", opens: null };
  if (from > day) return { ...outcome, verdict: "not yet", opens: from };
  return { ...outcome, verdict: outcome.inTime === "any" ? "safe" : "a gamble", opens: null };
}

/** The day from which frost and soil let it begin, as the plan's own sowings are reckoned. */
function opensOn(growing: Growing): Day | null {
  const { crop, planting } = growing;
  if (planting.start === "plants") return settingOutDay(growing)?.day ?? null;
  return crop.outdoors && plantingOutDay(growing, crop.outdoors).day;
}

const isSpoilt = (why: Refusal) => why !== "too late" && why !== "never up";

/** What heat, long days or cold would spoil waits for the first day that they do not. */
function later(growing: Growing, from: Day, why: Refusal): Answer {
  const opens = nextGood(growing, from);
  const then = opens === null ? null : outcomeOn(growing, opens);
  if (then && then.inTime !== "none") return { ...then, verdict: "not yet", opens, why };
  return { inTime: "none", ripe: null, end: null, verdict: "too late", opens: null, why };
}

function outcomeOn(growing: Growing, day: Day): Outcome {
  const end = endOf(growing, day);
  const why = refusalOf(growing, day);
  const none = { inTime: "none", ripe: null, end, why: why ?? "never up" } as const;
  if (why !== null && isSpoilt(why)) return none;
  const ripe = ripeInSeasons(startedOn(growing, day));
  if ("none" in ripe) return none;
  const inTime = worstSeason(growing, ripe, { end, atRisk: endAtRisk(growing, day, end) });
  return { inTime, ripe, end, why: inTime === "none" ? (why ?? "too late") : null };
}

type Ends = { readonly end: End | null; readonly atRisk: Day | null };

function worstSeason(
  growing: Growing,
  { warm, usual, cold }: InSeasons,
  { end, atRisk }: Ends,
): Outcome["inTime"] {
  const isBy = (ripe: Day | null, by: Day | null) =>
    ripe !== null && (by === null || worthTill(growing, ripe) <= by);
  const last = end?.day ?? null;
  if (isBy(usual, last)) return isBy(cold, atRisk) && isBy(cold, last) ? "any" : "usual";
  return isBy(warm, last) ? "warm" : "none";
}

function endOf(growing: Growing, day: Day): End | null {
  const last = lastHarvest(growing, day);
  if (last === null) return null;
  if (growing.bed?.kind === "greenhouse") return { by: "short days", day: last };
  return { by: isTender(growing.crop) ? "frost" : "hard frost", day: last };
}

/** For what frost kills, the first frost at the risk the garden runs with seed or with plants; for the rest its usual end. */
function endAtRisk(growing: Growing, day: Day, end: End | null): Day | null {
  const { site, risk } = growing.plan;
  const autumn = autumnAfter(growing, day);
  if (end?.by !== "frost" || !site.firstFrost || !autumn) return end?.day ?? null;
  const share = growing.planting.start === "plants" ? risk.raised : risk.seed;
  return plus(firstFrostAt(site.firstFrost, share), autumn.usual - site.firstFrost.usual);
}

/** The same planting as it would be if it were sown, planted or set out that day. */
export function startedOn(growing: Growing, day: Day): Growing {
  const { planting, sowing } = growing;
  const act = planting.start === "plants" ? "set out" : "start";
  const anchor = { day, from: "given", grounds: ["given"], task: null } as const;
  return { ...growing, anchors: new Map([[anchorKey(planting.key, sowing, act), anchor]]) };
}
