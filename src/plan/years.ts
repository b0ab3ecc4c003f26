import { cropFor } from "../crops/crops.ts";
import type { Pest } from "../crops/facts.ts";
import { inOrder, type Problem } from "../problems/problem.ts";
import { plantingsNamed } from "./after.ts";
import { tell } from "./codes.ts";
import type { Plan, Planting } from "./plan.ts";

/**
 * What is wrong or doubtful between the years' plans of one garden, whatever their order; file by file in year order.
 * Problem: `key-clash`, two files of one year, whose plantings would share their keys. Doubts: `after-unknown`,
 * a planting to follow that no year holds; `family-too-soon`; `net-over-hosts`; `in-twice`. Empty for one plan that follows nothing of another.
 */
export function joinYears(plans: readonly Plan[]): readonly Problem[] {
  const sorted = [...plans].sort((a, b) => a.year - b.year);
  return sorted.flatMap((plan, index) => {
    const before = sorted.slice(0, index).filter(({ year }) => year < plan.year);
    const twin = sorted.slice(0, index).find(({ year }) => year === plan.year);
    const last = before.find(({ year }) => year === plan.year - 1);
    return inOrder([
      ...(twin ? [clash(plan, twin)] : []),
      ...plan.plantings.flatMap((planting) => afterDoubt(planting, before)),
      ...plan.plantings.flatMap((planting) => familyDoubt(planting, plan, before)),
      ...(last ? plan.plantings.flatMap((planting) => hostsDoubt(planting, plan, last)) : []),
      ...(last ? plan.plantings.flatMap((planting) => inTwiceDoubt(planting, last)) : []),
    ]);
  });
}

function clash(plan: Plan, twin: Plan): Problem {
  return tell(
    "key-clash",
    { file: plan.file, line: 1, column: 1 },
    `This is a second plan of ${plan.year}, beside ${twin.file}`,
    "Keep one file a year, or correct its year",
  );
}

/**
 * The planting that one follows, in its own year's plan or, where that holds none, in the newest earlier one that
 * has exactly one of that name; null where it follows none, or none is found.
 */
export function followed(planting: Planting, plans: readonly Plan[]): Planting | null {
  const { after } = planting;
  if (after === null) return null;
  const all = plans.flatMap(({ plantings }) => plantings);
  const known = all.find(({ key }) => key === after);
  if (known) return known;
  const own = plans.find(({ plantings }) => plantings.some(({ key }) => key === planting.key));
  const before = plans.filter(({ year }) => year < (own?.year ?? Number.POSITIVE_INFINITY));
  return inNewest(after, before);
}

function inNewest(name: string, plans: readonly Plan[]): Planting | null {
  const newestFirst = [...plans].sort((a, b) => b.year - a.year);
  const fitting = newestFirst
    .map(({ plantings }) => plantingsNamed(name.replaceAll("-", " "), plantings))
    .find((found) => found.length > 0);
  return fitting?.length === 1 ? (fitting[0] ?? null) : null;
}

function afterDoubt(planting: Planting, before: readonly Plan[]): readonly Problem[] {
  const { after, at, written } = planting;
  if (after === null || after.includes("/") || inNewest(after, before)) return [];
  return [
    tell(
      "after-unknown",
      at,
      `${written} comes after ${after.replaceAll("-", " ")}, which no year's plan holds`,
      "Write the name of a planting of this plan or of an earlier year",
    ),
  ];
}

/** A planting belongs to the plan it went in by, which tells it to its end. */
function inTwiceDoubt(planting: Planting, last: Plan): readonly Problem[] {
  const twin = last.plantings.find(
    (other) => other.crop === planting.crop && other.inSince === null && other.bed === planting.bed,
  );
  if (planting.inSince === null || !twin) return [];
  return [
    tell(
      "in-twice",
      planting.at,
      `${planting.written} is in since last year, and ${last.file} plants it already`,
      "Leave it out here: last year's plan tells it to its end",
    ),
  ];
}

/** Years for which a family is kept out of a bed that had it. Source: common practice, three summers to come round. */
const YEARS_AWAY = 2;

/** What stands over from last year is last year's own; bags have new soil, and what stands for years stays. */
function familyDoubt(planting: Planting, plan: Plan, before: readonly Plan[]): readonly Problem[] {
  const family = cropFor(planting)?.family;
  const bed = plan.beds.find(({ key }) => key === planting.bed);
  if (!family || !bed || bed.kind === "bags" || planting.inSince !== null) return [];
  const found = [...before]
    .reverse()
    .filter(({ year }) => year >= plan.year - YEARS_AWAY)
    .flatMap(({ year, plantings }) => plantings.map((other) => ({ other, year })))
    .find(({ other }) => other.bed === bed.key && cropFor(other)?.family === family);
  if (!found || cropFor(planting)?.perennial) return [];
  const { other: had, year } = found;
  const when = year === plan.year - 1 ? "last year" : `in ${year}`;
  return [
    tell(
      "family-too-soon",
      planting.at,
      `${bed.name} had ${had.written} ${when}, and ${planting.written} is of the ${family} too`,
      "Give it another bed, so that the same pests do not find it again",
    ),
  ];
}

/** Flies that slept in the soil under last year's hosts come up inside the net. Birds do not. */
function hostsDoubt(planting: Planting, plan: Plan, last: Plan): readonly Problem[] {
  const bed = plan.beds.find(({ key }) => key === planting.bed);
  if (!bed || bed.kind === "bags" || planting.without.includes("cover")) return [];
  const against = pestsOf(planting);
  const host = last.plantings.find(
    (other) => other.bed === bed.key && pestsOf(other).some((pest) => against.includes(pest)),
  );
  const pest = host && pestsOf(host).find((each) => against.includes(each));
  if (!host || !pest || planting.inSince !== null) return [];
  return [
    tell(
      "net-over-hosts",
      planting.at,
      `${bed.name} had ${host.written} last year: a net over ${planting.written} shuts in the ${pest} that wintered in the soil`,
      "Give it another bed, or leave the net off with without covers",
    ),
  ];
}

/** What covers keep off it that winters in the soil. */
function pestsOf(planting: Planting): readonly Pest[] {
  const pests = cropFor(planting)?.covers.map(({ against }) => against) ?? [];
  return pests.filter((pest) => pest !== "birds");
}
