import type { Crop } from "../../crops/facts.ts";
import type { Planting, Site } from "../../garden/model/plan.ts";
import { COLDER_AT_LEAVES_K, type FrostStage, hardinessOf } from "../growth/hardiness.ts";
import { type Cover, coverWarmEnough, FABRIC_K, isWarmEnough } from "./fabric.ts";

/** Why a plant is left alone: its own nature, the night, or what it stands under. */
export type LeaveReason =
  | "not up"
  | "stands the winter"
  | "under the soil"
  | "hardy"
  | "light frost only"
  | "warm enough"
  | "under fabric"
  | "in the greenhouse";

/** What is left where no cover holds: a harvest to take, tops that come again from below, or nothing. */
export type FrostLoss = "pick" | "comes again" | "lost";

/** What one planting in its place needs for a night, from nothing to what no cover can do. */
export type FrostNeed =
  | { readonly kind: "leave"; readonly why: LeaveReason }
  | { readonly kind: "bury" }
  /** `over`: light fabric lies there already, and is not enough. */
  | ({ readonly kind: "cover"; readonly over: boolean } & Cover)
  | { readonly kind: "beyond"; readonly left: FrostLoss };

/** How much a need asks, rising; of a planting's sowings the one that asks most is told. */
export function needRank(need: FrostNeed): number {
  switch (need.kind) {
    case "leave":
      return 0;
    case "bury":
      return 1;
    case "cover":
      return need.fabric === "light fabric" ? 2 : need.sure ? 3 : 4;
    case "beyond":
      return 5;
  }
}

/** A night's low, as forecast and put right for the garden [°C], and what it meets. */
export type Night = {
  readonly lowC: number;
  readonly site: Site;
  readonly underGlass: boolean;
};

/** Warmer under glass without a fire [K]. Source: house rule; one thin layer, taken as light fabric is. */
const GLASS_K = FABRIC_K["light fabric"].value[0];

/**
 * Air at the leaves [°C]: colder than the forecast, since thermometers hang high; under glass a little warmer, and never
 * below what a greenhouse is kept above.
 */
export function leafC({ lowC, site, underGlass }: Night): number {
  const openC = lowC - COLDER_AT_LEAVES_K;
  if (!underGlass) return openC;
  const glassC = openC + GLASS_K;
  return Math.max(glassC, site.greenhouse?.keptAbove?.si ?? glassC);
}

/** What a planting at a stage needs for a night in its place. What the plan puts over it counts, as light fabric. */
export function frostNeedOf(
  { crop, planting }: { readonly crop: Crop; readonly planting: Planting },
  stage: FrostStage,
  night: Night,
): FrostNeed {
  const { kind, killsC, spared } = hardinessOf(crop, stage);
  if (spared !== null || killsC === null) return { kind: "leave", why: spared ?? "hardy" };
  const airC = leafC(night);
  if (isWarmEnough(airC, killsC)) return { kind: "leave", why: leaveReasonOf(kind, stage, night) };
  if (crop.hilling && stage === "young") return { kind: "bury" };
  const cover = coverWarmEnough(airC, killsC);
  if (cover === null) return { kind: "beyond", left: frostLossOf(crop, stage) };
  const over = planting.under.includes("fabric");
  if (over && cover.fabric === "light fabric") return { kind: "leave", why: "under fabric" };
  return { kind: "cover", over, ...cover };
}

function leaveReasonOf(
  kind: "tender" | "half-hardy" | "hardy",
  stage: FrostStage,
  { underGlass }: Night,
): LeaveReason {
  if (underGlass) return "in the greenhouse";
  if (kind === "tender" || stage === "young") return "warm enough";
  return kind === "hardy" ? "hardy" : "light frost only";
}

function frostLossOf(crop: Crop, stage: FrostStage): FrostLoss {
  if (crop.hilling) return "comes again";
  return stage === "bearing" || stage === "in flower" ? "pick" : "lost";
}
