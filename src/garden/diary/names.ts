import { slug } from "../../base/index.ts";
import { cropNamed } from "../../crops/index.ts";
import { plainName } from "../model/named.ts";
import type { Plan } from "../model/plan.ts";
import { ownName } from "../model/plantings.ts";
import { NICKNAMES } from "./nicknames.ts";

/** Words of the longest name that is looked for. Source: house rule; `purple sprouting broccoli early` is one. */
const MOST_WORDS = 4;

/** Where plantings are named in a line: from a letter to the one before another, and the name as the trade has it. */
export type NamePlace = { readonly from: number; readonly to: number; readonly name: string };

/** Words that hold a crop's name and mean none of its plantings. */
const NO_PLANTING =
  /^(?:carrot|cabbage|cabbage root|onion|leek|turnip) (?:fly|root fly|moth|beetles?|aphids?)$|^(?:pea|bean) (?:sticks|moth|straw|poles)$/;

type KnownNames = { readonly slugs: ReadonlySet<string>; readonly crops: ReadonlySet<string> };

/** A plan's names, cached, since each line of a diary is searched for them. */
const knownNames = new WeakMap<Plan, KnownNames>();

function namesOf(plan: Plan): KnownNames {
  const known = knownNames.get(plan) ?? {
    slugs: new Set(
      plan.plantings.flatMap((planting) =>
        [
          planting.name,
          planting.variety,
          `${planting.variety}s`,
          ownName(planting),
          planting.written,
          planting.written.replace(/^.* /, ""),
          `${planting.variety} ${planting.written}`,
          `${planting.written} ${planting.variety}`,
        ]
          .filter((name) => name !== null)
          .map(slug),
      ),
    ),
    crops: new Set(plan.plantings.map(({ crop }) => crop)),
  };
  knownNames.set(plan, known);
  return known;
}

/** The places in a line of small letters where a planting of one of the plans is named, the longest names first taken; in their order. */
export function namePlaces(text: string, plans: readonly Plan[]): readonly NamePlace[] {
  const words = [...text.matchAll(/[\p{L}\d][\p{L}\d'-]*/gu)].map(({ 0: word, index }) => ({
    from: index,
    to: index + word.length,
  }));
  const places: NamePlace[] = [];
  for (let first = 0; first < words.length; ) {
    const place = longestFrom(text, words.slice(first, first + MOST_WORDS), plans);
    const last = places.at(-1);
    // A second name right behind is a part of the plant: `strawberry runners`.
    const isPart = place && last && text.slice(last.to, place.place.from) === " ";
    if (place && !isPart) places.push(place.place);
    first += place?.words ?? 1;
  }
  return places;
}

type Word = { readonly from: number; readonly to: number };

function longestFrom(
  text: string,
  words: readonly Word[],
  plans: readonly Plan[],
): { readonly place: NamePlace; readonly words: number } | null {
  for (let count = words.length; count > 0; count--) {
    const from = words[0]?.from ?? 0;
    const to = words[count - 1]?.to ?? from;
    const written = text.slice(from, to);
    if (/[^\p{L}\d' -]/u.test(written)) continue;
    if (NO_PLANTING.test(written)) return null;
    const name = (Object.hasOwn(NICKNAMES, written) ? NICKNAMES[written] : undefined) ?? written;
    if (isNamed(name, plans)) return { place: { from, to, name }, words: count };
  }
  return null;
}

function isNamed(name: string, plans: readonly Plan[]): boolean {
  const plain = plainName(name);
  if (plain !== name) return false;
  const key = slug(plain);
  const crop = cropNamed(plain)?.key;
  return plans.some((plan) => {
    const { slugs, crops } = namesOf(plan);
    return slugs.has(key) || (crop !== undefined && crops.has(crop));
  });
}
