import { type Crop, FABRIC } from "../../crops/index.ts";
import type { Planting, Site } from "../../garden/model/index.ts";
import { COLDER_AT_LEAVES_K, type FrostStage, hardinessOf } from "../growth/hardiness.ts";
import { coverWarmEnough, isWarmEnough, type SavingCover } from "./fabric.ts";

/** Why a plant needs nothing: its own hardiness, the night, or what it is under already. */
export type LeaveReason =
  | "not up"
  | "stands the winter"
  | "under the soil"
  | "hardy"
  | "light frost only"
  | "warm enough"
  | "under fabric"
  | "in the greenhouse";

/** What remains where no cover is enough: a harvest to take, tops that grow again from below, or nothing. */
export type FrostLoss = "pick" | "comes again" | "lost";

/** What one planting in its place needs for a night, from nothing to more than any cover can do. */
export type FrostNeed =
  | { readonly kind: "leave"; readonly why: LeaveReason }
  | { readonly kind: "bury" }
  /** `over`: light fabric is there already, and is not enough. */
  | ({ readonly kind: "cover"; readonly over: boolean } & SavingCover)
  | { readonly kind: "beyond"; readonly left: FrostLoss };

/** How much a need requires, rising; of a planting's sowings the one that needs most is reported. */
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

/** A night's low, as forecast and as corrected for the garden [°C], with the place that it is for. */
export type Night = {
  readonly lowC: number;
  readonly site: Site;
  readonly underGlass: boolean;
};

/** How much warmer it is under unheated glass [K]. Source: house rule; one thin layer, as light fabric. */
const GLASS_K = FABRIC.warmsK["light fabric"].value[0];

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

/** What a planting at a stage needs for a night in its place. Covers in the plan count as light fabric. */
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
