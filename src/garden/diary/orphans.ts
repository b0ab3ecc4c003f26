import { nearest, type Problem, type TextPosition } from "../../base/index.ts";
import { plantingsNamed } from "../model/named.ts";
import type { DiaryLine, Plan, Planting } from "../model/plan.ts";
import { ownName } from "../model/plantings.ts";
import { diagnostic } from "../plan/codes.ts";
import { sayPlanting } from "./subjects.ts";

/** The subject of a task's id: `2027/early-beets`, `2027/bed/root-bed`. */
const SUBJECT = /^(?<year>\d{4})\/(?<bed>bed\/)?(?<slug>[^/]+)\/[^/]+\/[^/]+$/;

/** What a planting or a bed probably is called now, and where it stands in its plan. */
type Probable = { readonly name: string; readonly at: TextPosition };

/** Answers to jobs of a planting or bed that its year's plan no longer has: its key, the name in the key, and what it probably is now. */
export type OrphanedSubject = {
  readonly key: string;
  readonly plan: Plan;
  readonly name: string;
  readonly answers: number;
  readonly probably: Probable | null;
};

/** The subjects that lines answer and no plan has, in the order they are answered; of years without a plan there are none. */
export function orphansIn(
  lines: readonly DiaryLine[],
  plans: readonly Plan[],
): readonly OrphanedSubject[] {
  const answers = new Map<string, number>();
  for (const { answers: answered } of lines) {
    const key = /^(.+)\/[^/]+\/[^/]+$/.exec(answered?.task ?? "")?.[1];
    if (key !== undefined) answers.set(key, (answers.get(key) ?? 0) + 1);
  }
  return [...answers.keys()].flatMap((key) => orphanOf(key, answers, plans) ?? []);
}

function orphanOf(
  key: string,
  answers: ReadonlyMap<string, number>,
  plans: readonly Plan[],
): OrphanedSubject | null {
  const { year, bed, slug = "" } = SUBJECT.exec(`${key}/x/1`)?.groups ?? {};
  const plan = plans.find((each) => String(each.year) === year);
  if (!plan || (slug === "garden" && bed === undefined)) return null;
  const known: readonly KnownSubject[] =
    bed === undefined
      ? plan.plantings
      : plan.beds.map((each) => ({ ...each, key: `${year}/bed/${each.key}` }));
  if (known.some((each) => each.key === key)) return null;
  const name = slug.replaceAll("-", " ");
  // What has answers of its own had its name before.
  const isNew = (each: { readonly key: string }) => !answers.has(each.key);
  const probably =
    bed === undefined
      ? plantingLike(slug, plan.plantings.filter(isNew))
      : bedLike(slug, known.filter(isNew));
  return { key, plan, name, answers: answers.get(key) ?? 0, probably };
}

type KnownSubject = Pick<Planting, "key" | "name" | "at">;

function bedLike(slug: string, beds: readonly KnownSubject[]): Probable | null {
  const slugOf = ({ key }: KnownSubject) => key.replace(/^.*\//, "");
  const near = nearest(slug, beds.map(slugOf));
  const bed = beds.find((each) => slugOf(each) === near);
  return bed ? { name: bed.name ?? slugOf(bed), at: bed.at } : null;
}

/** The planting with the nearest name, else the only one of a crop that the name speaks of. */
function plantingLike(slug: string, plantings: readonly Planting[]): Probable | null {
  const near = nearest(slug, plantings.map(ownName));
  const words = slug.split("-");
  const spoken = words.flatMap((_, from) => {
    const [only, second] = plantingsNamed(words.slice(from).join(" "), plantings);
    return only && !second ? [only] : [];
  });
  const found = plantings.find((each) => ownName(each) === near) ?? spoken[0];
  return found ? { name: sayPlanting(found), at: found.at } : null;
}

/** What is to be said of it on the diary's page. */
export function sayOrphan({ name, probably, key }: OrphanedSubject): string {
  const what = key.includes("/bed/") ? "bed" : "planting";
  const now =
    probably === null ? "" : `; it is probably ${probably.name} now: add was: ${name} to it`;
  return `no ${what} is called ${name} any more, so it moves nothing${now}`;
}

/** A doubt for each that probably has another name now, where that stands in the plan. Doubt: `answers-orphaned`. */
export function orphanDoubts(
  lines: readonly DiaryLine[],
  plans: readonly Plan[],
): readonly Problem[] {
  return orphansIn(lines, plans).flatMap(({ name, answers, probably }) => {
    if (probably === null) return [];
    const many = answers === 1 ? "An answer" : `${answers} answers`;
    return diagnostic(
      "answers-orphaned",
      probably.at,
      `${many} to jobs of ${name} ${answers === 1 ? "moves" : "move"} nothing, since nothing is called so any more`,
      `If ${probably.name} is the same, add was: ${name} to it`,
    );
  });
}
