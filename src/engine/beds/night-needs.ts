import { CLOCHE, type Crop, FABRIC, type PlantCoverName } from "../../crops/index.ts";
import {
  COLDER_AT_LEAVES_K,
  type FrostStage,
  hardinessOf,
  standsHalfOut,
} from "../growth/hardiness.ts";
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
  | "under cloches"
  | "in the greenhouse";

/** What remains where no cover is enough: a harvest to take, tops that grow again from below, or nothing. */
export type FrostLoss = "pick" | "comes again" | "lost";

/** What one planting in its place needs for a night, from nothing to more than any cover can do. */
export type FrostNeed =
  | { readonly kind: "leave"; readonly why: LeaveReason }
  | { readonly kind: "bury" }
  /** What is ready is taken before the night; the rest comes later. */
  | { readonly kind: "pick" }
  /** `over`: light fabric is there already, and is not enough. */
  | ({ readonly kind: "cover"; readonly over: boolean } & SavingCover)
  | { readonly kind: "beyond"; readonly left: FrostLoss };

/** How much a need requires, rising; of a planting's sowings the one that needs most is reported. */
export function needRank(need: FrostNeed): number {
  switch (need.kind) {
    case "leave":
      return 0;
    case "bury":
    case "pick":
      return 1;
    case "cover":
      return need.fabric === "light fabric" ? 2 : need.sure ? 3 : 4;
    case "beyond":
      return 5;
  }
}

/** Where a plant stands for a night: in the open, or in a house that is kept above so much [°C], null without heater. */
export type NightPlace = { readonly keptAboveC: number | null } | "open";

/** A night's low, as forecast and as corrected for the garden [°C], with the place that it is for and what lies there already. */
export type Night = {
  readonly lowC: number;
  readonly place: NightPlace;
  readonly covers: readonly PlantCoverName[];
};

/**
 * How much warmer it is under unheated glass [K]. Source: house rule; one thin layer, as light fabric: on a clear still
 * night a house keeps less than the mean of GLASS_NIGHT_K.
 */
const GLASS_K = FABRIC.warmsK["light fabric"].value[0];

/**
 * Air at the leaves [°C]: colder than the forecast, since thermometers hang high; under glass a little warmer, and never
 * below what a greenhouse is kept above.
 */
export function leafC({ lowC, place }: Pick<Night, "lowC" | "place">): number {
  const openC = lowC - COLDER_AT_LEAVES_K;
  if (place === "open") return openC;
  const glassC = openC + GLASS_K;
  return Math.max(glassC, place.keptAboveC ?? glassC);
}

/** What warms a plant that lies over it already [K], and its name; nothing where neither fabric nor cloches do. */
function coverOn(
  covers: Night["covers"],
): { readonly warmsK: number; readonly why: LeaveReason } | null {
  if (covers.includes("fabric")) return { warmsK: GLASS_K, why: "under fabric" };
  if (covers.includes("cloche"))
    return { warmsK: CLOCHE.warmsK.air.value[0], why: "under cloches" };
  return null;
}

/** What a planting at a stage needs for a night in its place. Covers that lie there count as light fabric, or as cloches. */
export function frostNeedOf(crop: Crop, stage: FrostStage, night: Night): FrostNeed {
  const { kind, killsC, spared } = hardinessOf(crop, stage);
  if (spared !== null || killsC === null) return { kind: "leave", why: spared ?? "hardy" };
  const airC = leafC(night);
  if (isWarmEnough(airC, killsC)) return { kind: "leave", why: leaveReasonOf(kind, stage, night) };
  const on = coverOn(night.covers);
  if (on && isWarmEnough(airC + on.warmsK, killsC)) return { kind: "leave", why: on.why };
  if (crop.hilling && stage === "young") return { kind: "bury" };
  const isTaken = stage === "bearing" && standsHalfOut(crop);
  if (isTaken || crop.key === "asparagus") return { kind: "pick" };
  const cover = coverWarmEnough(airC, killsC);
  if (cover === null) return { kind: "beyond", left: frostLossOf(crop, stage) };
  return { kind: "cover", over: night.covers.includes("fabric"), ...cover };
}

function leaveReasonOf(
  kind: "tender" | "half-hardy" | "hardy",
  stage: FrostStage,
  { place }: Night,
): LeaveReason {
  if (place !== "open") return "in the greenhouse";
  if (kind === "tender" || stage === "young") return "warm enough";
  return kind === "hardy" ? "hardy" : "light frost only";
}

function frostLossOf(crop: Crop, stage: FrostStage): FrostLoss {
  if (crop.hilling) return "comes again";
  return stage === "bearing" || stage === "in flower" ? "pick" : "lost";
}
