import { type Day, sayDay } from "../../base/index.ts";
import { chanceOfFrostAfter, lastFrostAt, sayOdds } from "../../engine/index.ts";
import type { FrostDates, Plan } from "../../garden/model/index.ts";

/** The garden's usual frosts in a sentence; said too where there is none. */
export function usualFrostText({ site }: Pick<Plan, "site">): string {
  const { lastFrost, firstFrost } = site;
  if (!lastFrost || !firstFrost) return "No frost is expected here.";
  return `Last frost usually about ${sayDay(lastFrost.usual)}, first frost about ${sayDay(firstFrost.usual)}.`;
}

/** The garden's own dates, and the day for raised plants, a sentence each; none in a place without frost. */
export function frostDateLines(plan: Pick<Plan, "site" | "risk">): readonly string[] {
  const { lastFrost, firstFrost } = plan.site;
  const raised = raisedPlantsOut(plan);
  return [
    ...(lastFrost ? [`Last frost: ${frostDatesText(lastFrost)}.`] : []),
    ...(firstFrost ? [`First frost: ${frostDatesText(firstFrost)}.`] : []),
    ...(raised
      ? [
          `Tender plants we raised go out from ${sayDay(raised.day)}, when frost still comes in ${raised.odds}.`,
        ]
      : []),
  ];
}

function frostDatesText({ early, usual, late }: FrostDates): string {
  return `early ${sayDay(early)}, usual ${sayDay(usual)}, late ${sayDay(late)}`;
}

/** The day for raised plants at the plan's risk; `odds` as one says them; null in a place without frost. */
export function raisedPlantsOut({
  site,
  risk,
}: Pick<Plan, "site" | "risk">): { readonly day: Day; readonly odds: string } | null {
  if (!site.lastFrost) return null;
  const day = lastFrostAt(site.lastFrost, risk.raised);
  return { day, odds: sayOdds(risk.raised, "spring") };
}

/** How many springs have frost still to come on a day: `1 spring in 2`. */
export function springOdds(dates: FrostDates, day: Day): string {
  return sayOdds(chanceOfFrostAfter(dates, day), "spring");
}

/** How many autumns have had their first frost by a day: `1 autumn in 2`. */
export function autumnOdds(dates: FrostDates, day: Day): string {
  return sayOdds(1 - chanceOfFrostAfter(dates, day), "autumn");
}
