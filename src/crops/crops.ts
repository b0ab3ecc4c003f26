import { ASPARAGUS_FAMILY } from "./asparagus.ts";
import { BEET_FAMILY } from "./beets.ts";
import { BERRIES } from "./berries.ts";
import { BINDWEED_FAMILY } from "./bindweeds.ts";
import { BRASSICAS } from "./brassicas.ts";
import { CABBAGE_FAMILY } from "./cabbages.ts";
import { CARROT_FAMILY } from "./carrots.ts";
import { CHIVES } from "./chives.ts";
import { COMPOSITES } from "./composites.ts";
import { asCutAgain } from "./cutting.ts";
import { DAISY_FAMILY } from "./daisies.ts";
import type { Crop, Start } from "./facts.ts";
import { type FixtureName, isClimbed } from "./fixtures.ts";
import { FLOWERS } from "./flowers.ts";
import { GOURD_FAMILY } from "./gourds.ts";
import { GRAPE } from "./grapes.ts";
import { GRASS_FAMILY } from "./grasses.ts";
import { HERBS } from "./herbs.ts";
import { HONEYSUCKLE_FAMILY } from "./honeysuckles.ts";
import { KNOTWEED_FAMILY } from "./knotweeds.ts";
import { MALLOW_FAMILY } from "./mallows.ts";
import { GREEN_MANURES } from "./manures.ts";
import { MINT_FAMILY } from "./mints.ts";
import { MUSTARDS } from "./mustards.ts";
import { NASTURTIUM_FAMILY } from "./nasturtiums.ts";
import { NIGHTSHADES } from "./nightshades.ts";
import { ONION_FAMILY } from "./onions.ts";
import { PEA_FAMILY } from "./peas.ts";
import { QUICK_GREENS } from "./quick-greens.ts";
import { ROSE_FAMILY } from "./roses.ts";
import { SALADS } from "./salads.ts";
import { LONG_ROOTS } from "./salsify.ts";
import { SOFT_HERBS } from "./soft-herbs.ts";
import { OVER_WINTER } from "./sprouting.ts";
import { TOMATILLO } from "./tomatillos.ts";
import { TREES } from "./trees.ts";
import { UMBELS } from "./umbels.ts";

/** Every crop the facts know, family by family. */
export const CROPS: readonly Crop[] = [
  ...ASPARAGUS_FAMILY,
  ...BEET_FAMILY,
  ...BINDWEED_FAMILY,
  ...CABBAGE_FAMILY,
  ...BRASSICAS,
  ...MUSTARDS,
  ...QUICK_GREENS,
  ...CARROT_FAMILY,
  ...UMBELS,
  ...DAISY_FAMILY,
  ...SALADS,
  ...COMPOSITES,
  ...LONG_ROOTS,
  ...GOURD_FAMILY,
  ...GRASS_FAMILY,
  ...HONEYSUCKLE_FAMILY,
  ...KNOTWEED_FAMILY,
  ...MALLOW_FAMILY,
  ...MINT_FAMILY,
  ...NASTURTIUM_FAMILY,
  ...NIGHTSHADES,
  ...ONION_FAMILY,
  ...PEA_FAMILY,
  ...ROSE_FAMILY,
  ...OVER_WINTER,
  CHIVES,
  ...HERBS,
  ...SOFT_HERBS,
  TOMATILLO,
  ...FLOWERS,
  ...BERRIES,
  GRAPE,
  ...TREES,
  ...GREEN_MANURES,
];

const byKey = new Map(CROPS.map((crop) => [crop.key, crop]));
const byName = new Map(
  CROPS.flatMap((crop) =>
    [crop.key, crop.one, crop.many, ...crop.alsoCalled, ...crop.kinds].map(
      (name) => [name, crop] as const,
    ),
  ),
);
const kinds = new Set(CROPS.flatMap((crop) => crop.kinds));
const asNamed = (name: string) => name.trim().toLowerCase().replace(/\s+/g, " ");

/** The crop of that key, or null where the facts have none. */
export function cropOf(key: string): Crop | null {
  return byKey.get(key) ?? null;
}

/** The crop that a gardener means by a name of the trade (`beetroot`, `Spuds`), or null. Case and spaces do not matter. */
export function cropNamed(name: string): Crop | null {
  return byName.get(asNamed(name)) ?? null;
}

/** Whether a name is that of a kind (`gherkin`), and not one of the crop's own. Case and spaces do not matter. */
export function isKind(name: string): boolean {
  return kinds.has(asNamed(name));
}

/**
 * What a planting says about its crop: its key, how it begins, for a crop of the gardener's own the one that it is
 * grown like, what stands there for it already, whether it is cut young to grow again, and since when it is in.
 */
export type CropReference = {
  readonly crop: string;
  readonly start: Start;
  readonly like: string | null;
  readonly written: string;
  readonly has: readonly FixtureName[];
  readonly cutAgain: boolean;
  readonly inSince: number | null;
};

const cropCache = new WeakMap<CropReference, Crop | null>();

/**
 * The facts for a planting: those of its crop for the way it begins, and for a crop of the gardener's own those of the
 * crop it is grown like, under its own name. Null where the facts have none. The same planting gives the same object.
 */
export function cropFor(planting: CropReference): Crop | null {
  const known = cropCache.get(planting);
  if (known !== undefined) return known;
  const crop = buildCropFor(planting);
  cropCache.set(planting, crop);
  return crop;
}

function buildCropFor(planting: CropReference): Crop | null {
  const { crop: key, start, like, written, has, cutAgain, inSince } = planting;
  const facts = cropOf(like ?? key);
  if (!facts) return null;
  const other = facts.whenBegun[start];
  const young = other ? { ...facts, ...other } : facts;
  const begun = inSince !== null && young.whenOld ? { ...young, ...young.whenOld } : young;
  const climbs = begun.support !== null && isClimbed(has) ? { ...begun, support: null } : begun;
  const grown = cutAgain ? asCutAgain(climbs) : climbs;
  return like === null ? grown : { ...grown, key, one: written, many: written, alsoCalled: [] };
}

/**
 * Whether a crop can begin so: in one of the ways of its facts, or winter-sown where it grows from seed and is set out.
 * Source: common practice: what is sown in boxes in winter is what can be transplanted, tender crops six weeks ahead.
 */
export function canBegin({ starts, settingOut }: Crop, start: Start): boolean {
  if (starts.includes(start)) return true;
  const fromSeed = starts.includes("seed indoors") || starts.includes("seed outdoors");
  return start === "winter-sown" && settingOut !== null && fromSeed;
}

/** Whether frost kills it; such a crop is hardened off hour by hour. */
export function isTender(crop: Crop): boolean {
  return crop.frost.value === "tender" || crop.frost.value === "warm loving";
}

/** Every name that cropNamed knows, in lower case, sorted. */
export function cropNames(): readonly string[] {
  return [...byName.keys()].sort();
}
