import { slug, suggestion } from "../../base/index.ts";
import { type Crop, cropNamed, cropNames, isKind } from "../../crops/index.ts";
import type { Bed, Planting } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import {
  daysUnder,
  readAmount,
  readCovers,
  readCutAgain,
  readFixtures,
  readMulch,
  readRepeat,
  readWithout,
} from "./details.ts";
import { namer } from "./names.ts";
import { personKey } from "./people.ts";
import type { ReadLog } from "./place.ts";
import { type PlantingReadContext, readPlantingDates, readStart } from "./planting-start.ts";
import {
  entriesOf,
  itemsOf,
  type Tree,
  valueUnder,
  type Words,
  wordsAt,
  wordsUnder,
} from "./tree.ts";

/** A planting with the words for what it follows or stands between, which are resolved once all plantings are known. */
export type UnlinkedPlanting = {
  readonly planting: Planting;
  readonly after: Words | null;
  readonly between: Words | null;
};

/** A planting in key form and its bed, null where it has none. */
type Item = { readonly tree: Tree; readonly bed: Bed | null };

/**
 * Every planting of a plan in key form, in the order of the file. What the plan does not say is filled in from the
 * facts and listed. A planting without a usable name or crop is left out, and its problem is reported.
 */
export function readPlantings(
  tree: Tree,
  reading: PlantingReadContext,
): readonly UnlinkedPlanting[] {
  const name = namer("planting", reading.problems);
  return inFileOrder(tree, reading.beds).flatMap((item) => {
    const found = readPlanting(item, name, reading);
    return found ? [found] : [];
  });
}

function inFileOrder(tree: Tree, beds: readonly Bed[]): readonly Item[] {
  const inBeds = entriesOf(valueUnder(tree, "beds")).flatMap(({ key, value }) => {
    const bed = beds.find((known) => known.name === key.text) ?? null;
    return itemsOf(valueUnder(value, "crops")).map((item) => ({ tree: item, bed }));
  });
  const others = itemsOf(valueUnder(tree, "crops")).map((item) => ({ tree: item, bed: null }));
  const line = ({ tree: { at } }: Item) => at.line * 1e6 + at.column;
  return [...inBeds, ...others].sort((a, b) => line(a) - line(b));
}

function readPlanting(
  { tree, bed }: Item,
  nameOf: (name: Words) => string | null,
  reading: PlantingReadContext,
): UnlinkedPlanting | null {
  const written = wordsUnder(tree, "crop");
  if (written === null) return null;
  const model = readLike(tree, reading);
  const crop = model ?? cropOfWords(written, reading);
  const key = nameOf(identity(tree, written, model ? null : crop));
  if (key === null) return null;
  const what = wordsUnder(tree, "name")?.text ?? written.text;
  const start = readStart(tree, crop, { what, reading });
  return {
    planting: {
      key: `${reading.year ?? 0}/${key}`,
      crop: model ? slug(written.text) : (crop?.key ?? slug(written.text)),
      known: crop !== null,
      like: model?.key ?? null,
      written: written.text,
      name: wordsUnder(tree, "name")?.text ?? null,
      variety: wordsUnder(tree, "variety")?.text ?? null,
      bed: bed?.key ?? null,
      amount: readAmount(tree, what, reading),
      start,
      ...readPlantingDates(tree, start, reading),
      days: daysUnder(tree, "days", reading),
      hardenDays: daysUnder(tree, "harden off", reading),
      repeat: readRepeat(tree, crop, { what, reading }),
      under: withThoseOfBed(readCovers(tree, "under", reading), bed?.covers),
      has: withThoseOfBed(readFixtures(tree, reading), bed?.has),
      mulch: readMulch(tree, reading) ?? bed?.mulch ?? null,
      cutAgain: readCutAgain(tree, crop, reading),
      sproutedFirst: isTrue(tree, "sprouted first"),
      after: null,
      without: readWithout(tree, reading),
      whose: readWhose(tree, reading),
      at: written.at,
    },
    after: wordsUnder(tree, "after"),
    between: wordsUnder(tree, "between"),
  };
}

/** A planting's own things, then those of its bed that are not among them. */
function withThoseOfBed<Thing>(
  own: readonly Thing[],
  ofBed: readonly Thing[] = [],
): readonly Thing[] {
  return [...new Set([...own, ...ofBed])];
}

/** `was:`, else `name:`, else crop or kind, and variety. */
function identity(tree: Tree, written: Words, crop: Crop | null): Words {
  const named = wordsUnder(tree, "was") ?? wordsUnder(tree, "name");
  if (named) return crop ? asKeyed(named, crop) : named;
  const variety = wordsUnder(tree, "variety")?.text ?? "";
  const name = crop && !isKind(written.text) ? crop.key : written.text;
  return wordsAt(`${name} ${variety}`.trim(), written.at);
}

/** A name that begins with any trade name of its crop gets the crop's key there: `was: beetroot` was `beet`. */
function asKeyed(named: Words, crop: Crop): Words {
  const parts = named.text.trim().split(/[\s,:]+/);
  for (let count = parts.length; count > 0; count--) {
    const first = parts.slice(0, count).join(" ");
    if (cropNamed(first) === crop && !isKind(first))
      return wordsAt([crop.key, ...parts.slice(count)].join(" "), named.at);
  }
  return named;
}

/** The crop that a crop of the gardener's own is grown like, or null. Doubt: `crop-unknown`. */
function readLike(tree: Tree, reading: PlantingReadContext): Crop | null {
  const words = wordsUnder(tree, "like");
  return words && cropOfWords(words, reading);
}

function cropOfWords(words: Words, { problems }: ReadLog): Crop | null {
  const crop = cropNamed(words.text);
  if (crop) return crop;
  problems.push(
    diagnostic(
      "crop-unknown",
      words.at,
      `${words.text.slice(0, 60)} is not in the crop facts`,
      suggestion(words.text, cropNames(), grownLike(words.text)),
    ),
  );
  return null;
}

const grownLike = (name: string) =>
  `It stays in the plan, without work of its own; write ${name.slice(0, 40)}: like … with a crop that grows alike`;

function readWhose(tree: Tree, reading: PlantingReadContext): string | null {
  const words = wordsUnder(tree, "for");
  return words && personKey(words, reading.people, reading);
}

function isTrue(tree: Tree, key: string): boolean {
  const value = valueUnder(tree, key);
  return value?.kind === "words" && value.value === true;
}
