import { celsius, type Day, latest, plus } from "../../base/index.ts";
import { type Crop, isTender } from "../../crops/index.ts";
import { isReached } from "./milestones.ts";
import { ripeMilestone } from "./ripe.ts";
import { anchorOf, inPlace, type SowingContext } from "./sowing-context.ts";
import { upMilestone } from "./up.ts";

/**
 * The stage of a sowing when frost comes: nothing above the soil, its first weeks, grown, in blossom that frost
 * damages, or ready to bring in.
 */
export type FrostStage = "not up" | "young" | "standing" | "in flower" | "bearing";

/**
 * The days of a sowing that its stage depends on: `out` null where it grows in its place from the start, `ready` null
 * where it does not ripen.
 */
export type StageDays = {
  readonly up: Day;
  readonly out: Day | null;
  readonly ready: Day | null;
};

/**
 * Days before their usual day on which shoots may be up. Source: house rule; emergence is never more exact than that.
 */
const MAY_BE_EARLY_DAYS = 3;

/**
 * A plant that has been up, or set out, for less than this is hurt sooner than a grown one [days]. Source: house rule;
 * published figures are for hardened plants, Masabni, Texas A&M AgriLife Extension, from memory.
 */
export const YOUNG_DAYS = 21;

/** Days from the first flowers of peas to their first pods. Source: common practice, about three weeks. */
const FLOWER_DAYS = 21;

/** Days before the first berries from which strawberries may be in blossom. Source: common practice, about five weeks, and house rule, one more. */
const BLOSSOM_DAYS = 42;

/** Days before the first cut from which spears may show. Source: house rule; they come in a few warm days. */
const SPEARS_EARLY_DAYS = 7;

/**
 * The stage of what stands for years: before its harvest asleep under the soil (asparagus) or in leaf, strawberries in flower
 * until they bear, and in leaf again when its weeks of harvest are over.
 */
function perennialStage(crop: Crop, ready: Day, day: Day): FrostStage {
  const weeks = crop.perennial?.harvestWeeks.value[1] ?? 0;
  const over = day > plus(ready, 7 * weeks);
  if (crop.key === "asparagus" && day < plus(ready, -SPEARS_EARLY_DAYS)) return "not up";
  if (crop.key === "asparagus") return over ? "standing" : "bearing";
  const flowers = crop.key === "strawberry" && day >= plus(ready, -BLOSSOM_DAYS) && day < ready;
  if (flowers) return "in flower";
  return day < ready || over ? "standing" : "bearing";
}

/** The stage of a crop's sowing on the night that follows a day. */
export function frostStage(crop: Crop, { up, out, ready }: StageDays, day: Day): FrostStage {
  if (crop.perennial && ready !== null) return perennialStage(crop, ready, day);
  if (out === null && day < plus(up, -MAY_BE_EARLY_DAYS)) return "not up";
  const flowers =
    crop.family === "pea family" && ready !== null && day >= plus(ready, -FLOWER_DAYS);
  if (flowers && !isTender(crop)) return "in flower";
  if (ready !== null && day >= ready) return "bearing";
  return day < plus(latest(up, out ?? up), YOUNG_DAYS) ? "young" : "standing";
}

/** The same of what is growing, by its usual days; null where it is not in its place on that day. */
export function frostStageOf(context: SowingContext, day: Day): FrostStage | null {
  const anchor = inPlace(context);
  if (!anchor || anchor.day > day) return null;
  const [up, ripe] = [upMilestone(context), ripeMilestone(context)];
  const days: StageDays = {
    up: isReached(up) ? up.usual : anchor.day,
    out: anchorOf(context, "set out")?.day ?? null,
    ready: isReached(ripe) ? ripe.usual : null,
  };
  return frostStage(context.crop, days, day);
}

/**
 * What frost does to a crop: kills it, spares it while it is light, or hardly ever hurts it. `killsC`: hurt below this,
 * at the leaves [°C]; null where no frost of a growing season does. `spared` says why that is.
 */
export type Hardiness = {
  readonly kind: "tender" | "half-hardy" | "hardy";
  readonly killsC: number | null;
  readonly spared: "not up" | "stands the winter" | "under the soil" | null;
};

const neverHurt = (spared: Hardiness["spared"]): Hardiness => ({
  kind: "hardy",
  killsC: null,
  spared,
});
const hurtBelow = (kind: Hardiness["kind"], fahrenheit: number): Hardiness => ({
  kind,
  killsC: celsius(fahrenheit),
  spared: null,
});

/**
 * Colder at the leaves on a still clear night than the forecast says [K], 4 °F. Source: Ritchison, Frost Season: a frost
 * advisory is given for 33 to 36 °F because official thermometers hang near five feet; the larger step, to 32 °F.
 */
export const COLDER_AT_LEAVES_K = (4 * 5) / 9;

/**
 * Degrees at the leaves [°F] below which each class is hurt, grown and young. Source: Purdue University Extension
 * HO-203, Vegetables: frost resistance: tender crops are killed by frost, warm-loving ones survive no cold (house rule:
 * two degrees sooner), frost-tolerant ones survive light frosts (28 °F forecast and above), very hardy ones hard frosts
 * for short periods (24 °F); both less COLDER_AT_LEAVES_K. Young: four degrees sooner, house rule.
 */
const HURT_BELOW_F = {
  "warm loving": { grown: 34, young: 34 },
  tender: { grown: 32, young: 32 },
  "frost tolerant": { grown: 24, young: 28 },
  "very hardy": { grown: 20, young: 24 },
} as const;

/**
 * Crops whose grown leaves are a class less hardy, or more, than their class in spring: an early sowing does not make a
 * crop safe in a hard frost. Source: Masabni, Texas A&M AgriLife Extension, from memory, unchecked; the class with the
 * nearest figure.
 */
const LEAVES_AS: Readonly<Record<string, keyof typeof HURT_BELOW_F>> = {
  lettuce: "frost tolerant",
  mustard: "frost tolerant",
  turnip: "frost tolerant",
  onion: "frost tolerant",
  parsley: "very hardy",
  "brussels-sprouts": "very hardy",
};

/**
 * What is hurt sooner than the leaves around it, by crop and stage, degrees at the plant [°F]. Source: common practice for
 * open strawberry blossom, small berries, spears and stalks; heads of broccoli and cauliflower: PMC10202904, Table 2, one
 * copy, -2 to -4 °C, the middle; ready lettuce and celery: Masabni, Texas A&M AgriLife Extension, from memory, unchecked,
 * 26 to 31 °F, the middle.
 */
const HURT_AT_STAGE_F: Readonly<Record<string, Partial<Record<FrostStage, number>>>> = {
  strawberry: { "in flower": 30, bearing: 30 },
  asparagus: { bearing: 31 },
  rhubarb: { bearing: 26 },
  broccoli: { bearing: 27 },
  cauliflower: { bearing: 27 },
  "head-lettuce": { bearing: 28 },
  celery: { bearing: 28 },
};

/** Roots that lie in the soil up to their necks. One night does not freeze it so deep. Source: house rule. */
const BURIED: readonly string[] = ["carrot", "parsnip"];

/** Families whose roots and stems swell half above the soil; what is pulled of them is hurt at its shoulders. */
const SWELLING: readonly Crop["family"][] = ["beet family", "carrot family", "cabbage family"];
const PULLED: readonly string[] = ["Pull", "Dig", "Lift"];

/** Whether what is eaten of it stands half out of the soil: beets, turnips, celeriac, kohlrabi, radishes. */
export function standsHalfOut({ key, family, harvest }: Crop): boolean {
  if (BURIED.includes(key)) return false;
  return key === "kohlrabi" || (SWELLING.includes(family) && PULLED.includes(harvest.verb));
}

/** What stands for years and is not tender comes again from below, whatever becomes of its leaves. */
const isAsleep = (crop: Crop, stage: FrostStage) =>
  crop.perennial !== null && stage === "standing" && !isTender(crop);

/**
 * What frost does to a crop at a stage; every other decision about frost uses this one. Exceptions to its class:
 * nothing that is not up is hurt; a crop that overwinters survives; shoots that are hilled are tender and their tubers
 * safe, as carrots and parsnips that are ready are; blossom, spears and ready heads are hurt sooner than leaves; beets that are
 * ready are as hardy as the very hardy; what stands for years outlives its leaves.
 * Source: HURT_BELOW_F; shoots, blossom and roots: Masabni, Texas A&M AgriLife Extension, from memory, unchecked.
 */
export function hardinessOf(crop: Crop, stage: FrostStage): Hardiness {
  if (stage === "not up") return neverHurt("not up");
  const part = HURT_AT_STAGE_F[crop.key]?.[stage];
  if (part !== undefined) return hurtBelow("half-hardy", part);
  if (crop.overwinter || isAsleep(crop, stage)) return neverHurt("stands the winter");
  const buried = crop.hilling !== null || BURIED.includes(crop.key);
  if (buried && stage === "bearing") return neverHurt("under the soil");
  if (crop.hilling || stage === "in flower") return hurtBelow("tender", HURT_BELOW_F.tender.grown);
  if (isTender(crop)) return hurtBelow("tender", HURT_BELOW_F[crop.frost.value].grown);
  const root = stage === "bearing" && crop.family === "beet family" && standsHalfOut(crop);
  const grown = HURT_BELOW_F[root ? "very hardy" : (LEAVES_AS[crop.key] ?? crop.frost.value)];
  const kind = grown.grown > HURT_BELOW_F["very hardy"].grown ? "half-hardy" : "hardy";
  return hurtBelow(kind, stage === "young" ? grown.young : grown.grown);
}
