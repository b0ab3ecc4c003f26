import { slug } from "../../base/index.ts";
import { cropNamed } from "../../crops/index.ts";
import type { Planting } from "./plan.ts";
import { ownName } from "./plantings.ts";

/**
 * The plantings that a name fits, in their order: those given that name by the gardener, else those whose key it is,
 * else those of that variety or crop. Articles and the words rows and plants do not matter; plurals and trade names are
 * understood as for crops; what no crop is called is the last word of one, `squash` of `winter squash`.
 */
export function plantingsNamed(text: string, plantings: readonly Planting[]): readonly Planting[] {
  const plain = plainName(text);
  const key = slug(plain);
  const called = plantings.filter((planting) => slugsOf(planting).called === key);
  if (called.length > 0) return called;
  const crop = cropNamed(plain)?.key ?? key;
  const own = plantings.filter((planting) => [key, crop].includes(ownName(planting)));
  if (own.length > 0) return own;
  const whole = plantings.filter((planting) => slugsOf(planting).names.includes(key));
  if (whole.length > 0) return whole;
  const grown = plantings.filter((planting) => planting.crop === crop);
  return grown.length > 0
    ? grown
    : plantings.filter(({ written }) => written.endsWith(` ${plain}`));
}

/** A planting's name in lower case, without its article and without a last word rows or plants. */
export function plainName(text: string): string {
  const small = text.trim().toLowerCase();
  return small.replace(/^(?:the|our|my) /, "").replace(/ (?:rows?|plants?)$/, "");
}

type Slugs = { readonly called: string | null; readonly names: readonly string[] };

/** Names by planting, since each line of a diary asks for those of all plantings many times. */
const knownSlugs = new WeakMap<Planting, Slugs>();

/** The slug of the name that the gardener gave a planting; null where it has none of its own. */
export const calledSlug = (planting: Planting): string | null => slugsOf(planting).called;

function slugsOf(planting: Planting): Slugs {
  const { name } = planting;
  const slugs = knownSlugs.get(planting) ?? {
    called: name === null ? null : slug(name),
    names: namesOf(planting),
  };
  knownSlugs.set(planting, slugs);
  return slugs;
}

function namesOf({ variety, written, crop }: Planting): readonly string[] {
  if (variety === null) return [];
  return [
    slug(variety),
    slug(`${variety}s`),
    slug(`${variety} ${written}`),
    slug(`${variety} ${crop}`),
    slug(`${written} ${variety}`),
    slug(`${crop} ${variety}`),
  ];
}
