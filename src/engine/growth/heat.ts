import { type Day, plus } from "../../base/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { isReached } from "./milestones.ts";
import { ripeMilestone } from "./ripe.ts";
import { inPlace, type SowingContext } from "./sowing-context.ts";

/**
 * The days of a summer in which flowers may drop: `every summer` where the usual days or nights are too hot for fruit to set, else
 * `hot spells`. `sowAgain`: the day from which seed flowers as the heat goes.
 */
export type GreatHeat = {
  readonly from: Day;
  readonly to: Day;
  readonly comes: "every summer" | "hot spells";
  readonly sowAgain: Day;
};

/** How much hotter than usual the days and nights of a hot spell are [K]. Source: house rule; about the hottest days of a month. */
const SPELL_K = { day: 5, night: 4 } as const;

/** Days from sowing to the first flowers in summer. Source: common practice, five weeks for beans. */
const TO_FLOWER_DAYS = 35;

/** The great heat that a planting's first sowing meets in its place, in the open; null where its fruit sets all summer. */
export function greatHeatOf(context: SowingContext): GreatHeat | null {
  const { crop, climate, plan } = context;
  const limits = crop.setsBelow?.value;
  const start = inPlace(context);
  if (!limits || !start || climate.underGlass || !isReached(ripeMilestone(context))) return null;
  const { air } = climate.usual();
  const hotBy = (k: { readonly day: number; readonly night: number }) => (day: Day) =>
    air(day).highC + k.day > limits.dayC || air(day).lowC + k.night > limits.nightC;
  const days = Array.from({ length: Math.max(0, seasonOf(plan).to - start.day) }, (_, i) =>
    plus(start.day, i),
  );
  const usual = days.filter(hotBy({ day: 0, night: 0 }));
  const hot = usual.length > 0 ? usual : days.filter(hotBy(SPELL_K));
  const [from, to] = [hot[0], hot.at(-1)];
  if (from === undefined || to === undefined) return null;
  const comes = usual.length > 0 ? "every summer" : "hot spells";
  return { from, to, comes, sowAgain: plus(to, 1 - TO_FLOWER_DAYS) };
}
