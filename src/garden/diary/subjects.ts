import { type Day, joinWords, slug } from "../../base/index.ts";
import { cropFor } from "../../crops/index.ts";
import { calledSlug, plainName, plantingsNamed } from "../model/named.ts";
import type { Bed, Plan, Planting } from "../model/plan.ts";
import { seasonOf } from "../model/season.ts";
import { meantNames, withoutParts } from "./meant-names.ts";

/** What a name in a line means on a day: one planting, and which of its sowings where said; else why not. */
export type DiarySubject =
  | { readonly planting: Planting; readonly sowing: number | null }
  | { readonly why: string };

const ORDINALS: Readonly<Record<string, number>> = {
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
};

/**
 * On which day something is said, and of which plantings it can be; of all where that is left out. `all`: only the whole of
 * a planting is meant, so that `2 of the beets` is none.
 */
export type SubjectSearch = {
  readonly day: Day;
  readonly canBe?: (planting: Planting) => boolean;
  readonly all?: true;
};

/**
 * The planting that a gardener means by a name on a day, with the sowing that is numbered in it (`lettuce 2`,
 * `second lettuce`, `third sowing of lettuce`). The season's own plantings come first, with those that stand
 * over from the year before; then all others. Where more than one fits, or none, it is why.
 */
export function subjectOf(
  name: string,
  { day, canBe = () => true, all }: SubjectSearch,
  plans: readonly Plan[],
): DiarySubject {
  const groups = groupsOn(day, plans).map((group) => group.filter(canBe));
  const key = slug(plainName(name));
  const called = groups.some((group) => group.some((each) => calledSlug(each) === key));
  const elsewhere = plans
    .flatMap(({ plantings }) => plantings)
    .some((each) => calledSlug(each) === key);
  if (elsewhere && !called) return { why: `${name} is none it can be said of on that day` };
  const names = all ? [...new Set([name, withoutParts(name)])] : meantNames(name);
  const [written = { why: `no planting is called ${name}` }, ...others] = names.map((each) =>
    subjectCalled(each, groups),
  );
  if ("planting" in written || written.why.includes(" fits ")) return written;
  return (
    others.find((each) => "planting" in each) ??
    others.find((each) => "why" in each && each.why.includes(" fits ")) ??
    written
  );
}

function subjectCalled(name: string, groups: readonly (readonly Planting[])[]): DiarySubject {
  const whole = among(name, groups);
  if ("planting" in whole) return whole;
  const numbered = withNumber(name);
  if (numbered === null || whole.why.includes(" fits ")) return whole;
  const found = among(numbered.name, groups);
  return "planting" in found ? { ...found, sowing: numbered.sowing } : whole;
}

/** The plan whose season a day lies in; where there is none, the newest. */
export function planInSeason(day: Day, plans: readonly Plan[]): Plan | null {
  const newestFirst = [...plans].sort((a, b) => b.year - a.year);
  const inSeason = newestFirst.find((plan) => {
    const { from, to } = seasonOf(plan);
    return day >= from && day <= to;
  });
  return inSeason ?? newestFirst[0] ?? null;
}

type Groups = readonly (readonly Planting[])[];

/** Groups by the plans they are of, since each line of a diary asks for them many times. */
const knownGroups = new WeakMap<readonly Plan[], Map<Day, Groups>>();

function groupsOn(day: Day, plans: readonly Plan[]): Groups {
  const byDay = knownGroups.get(plans) ?? new Map<Day, Groups>();
  knownGroups.set(plans, byDay);
  const groups = byDay.get(day) ?? groupPlantings(day, plans);
  byDay.set(day, groups);
  return groups;
}

/** Plantings of the day's own season and what overwinters into it; then every other one. */
function groupPlantings(day: Day, plans: readonly Plan[]): Groups {
  const isNow = (plan: Plan) => {
    const { from, to } = seasonOf(plan);
    return day >= from && day <= to;
  };
  const now = plans.filter(isNow);
  const before = plans.filter((plan) => now.some(({ year }) => year === plan.year + 1));
  const over = before.flatMap(({ plantings }) => plantings.filter(overwinters));
  const first = [...now.flatMap(({ plantings }) => plantings), ...over];
  const rest = plans.flatMap(({ plantings }) => plantings).filter((p) => !first.includes(p));
  return [first, rest];
}

/** Days before the plan's own day by which a planting may be in the ground. Source: house rule; more is another planting. */
const SOONER_DAYS = 30;

/** Whether a planting can stand there on a day; not one that the plan begins on a later day. */
export function mayStand({ inSince, fixed }: Planting, day: Day): boolean {
  const from = inSince ?? fixed.start ?? fixed.out;
  return from === null || from <= day + SOONER_DAYS;
}

/** Whether its crop is planted in autumn to stand the winter. */
export function overwinters(planting: Planting): boolean {
  return cropFor(planting)?.overwinter !== null && cropFor(planting) !== null;
}

function among(name: string, groups: readonly (readonly Planting[])[]): DiarySubject {
  for (const group of groups) {
    const fitting = plantingsNamed(name, group);
    const [only, second] = fitting;
    if (only && !second) return { planting: only, sowing: null };
    if (only) return { why: `${name} fits ${joinWords(fitting.map(sayPlanting))}` };
  }
  return { why: `no planting is called ${name}` };
}

/** Its own name, or variety and crop. */
export function sayPlanting({ name, variety, written }: Planting): string {
  return name ?? [variety, written].filter((word) => word !== null).join(" ");
}

function withNumber(name: string): { readonly name: string; readonly sowing: number } | null {
  const plain = name.replace(/^the /, "");
  const last = /^(.+?),?(?: sowing| no\.?| number| batch| lot| round)? #?(\d{1,2})$/.exec(plain);
  if (last) return { name: last[1] ?? "", sowing: Number(last[2]) };
  const first =
    /^(\w+?)(?:st|nd|rd|th)? (?:sowing of |lot of |batch of )?(?:the )?(.+?)(?: sowing)?$/.exec(
      plain,
    );
  const sowing = Number(first?.[1]) || ordinal(plain);
  return first && sowing ? { name: nameBehind(plain), sowing } : null;
}

function ordinal(text: string): number {
  const word = /^\w+/.exec(text)?.[0] ?? "";
  return Object.hasOwn(ORDINALS, word) ? (ORDINALS[word] ?? 0) : 0;
}

function nameBehind(text: string): string {
  return text.replace(/^\w+ (?:(?:sowing|lot|batch) of )?(?:the )?/, "").replace(/ sowing$/, "");
}

/** The bed of that name in the newest plan that has it; `south` is the South bed. */
export function bedNamed(name: string, plans: readonly Plan[]): Bed | null {
  const key = slug(name);
  const beds = [...plans].sort((a, b) => b.year - a.year).flatMap((plan) => plan.beds);
  return (
    beds.find((bed) => [slug(bed.name), bed.key].includes(key)) ??
    beds.find((bed) => [slug(bed.name), bed.key].includes(`${key}-bed`)) ??
    null
  );
}
