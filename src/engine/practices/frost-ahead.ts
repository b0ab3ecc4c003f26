import type { Day } from "../../base/index.ts";
import { type Family, isTender } from "../../crops/index.ts";
import { firstFrostAt } from "../climate/frost.ts";
import { anchorKey } from "../growth/anchors.ts";
import { naturalEndOf } from "../growth/bearing.ts";
import { frostStageOf, hardinessOf } from "../growth/hardiness.ts";
import { ripening } from "../growth/ripening.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import type { WholeGarden } from "./practice.ts";
import { how, type Sentence, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, sharedTask, type TaskOf, window } from "./task.ts";

/** Share of autumns that have had their frost by the day of the warning. Source: house rule. */
const WARNED_AT = 0.1;

/** Letters that the names may take, of what is to be saved and of what may stay. Source: house rule, so that the rest has room. */
const LONGEST = { saved: 120, left: 90 } as const;

/** Whether all of it is brought in at once, and before the frost in a usual season. */
function isInBefore(context: SowingContext): boolean {
  return context.crop.harvest.kind === "once" && ripening(context).ripens;
}

/**
 * Whether the end of the season is what ends it: tender, in its place before that day, and not over or brought in before.
 * `end` is the first frost in the open; under glass also the days that get too short.
 */
export function endsWithSeason(context: SowingContext, end: Day | null): boolean {
  const anchor = inPlace(context);
  if (!end || !isTender(context.crop) || !anchor) return false;
  return anchor.day < end && naturalEndOf(context) === null && !isInBefore(context);
}

/** Whether the first frost outdoors is what ends it; false of what stands under glass. */
export function endsWithFrost(context: SowingContext): boolean {
  if (context.climate.underGlass) return false;
  return endsWithSeason(context, context.plan.site.firstFrost?.usual ?? null);
}

/** A planting by its name, and the name of its bed; empty where it stands in none. */
type NameInBed = { readonly name: string; readonly bed: string };

/** In the order of the plan's beds, behind them what stands in none; alike in one bed once. */
function inWalkingOrder(
  { plan }: WholeGarden,
  contexts: readonly SowingContext[],
): readonly NameInBed[] {
  return [...plan.beds, null].flatMap((bed) => {
    const here = contexts.filter((context) => (context.bed?.key ?? null) === (bed?.key ?? null));
    return [...new Set(here.map(objectOf))].map((name) => ({ name, bed: bed?.name ?? "" }));
  });
}

/** `tomatoes, basil (South bed), beans (Long bed)`. */
function byBed(all: readonly NameInBed[]): string {
  return all
    .map(({ name, bed }, i) => (bed === "" || bed === all[i + 1]?.bed ? name : `${name} (${bed})`))
    .join(", ");
}

/** As many as there is room for, one at the least; then how many more. */
function listWithin(all: readonly NameInBed[], longest: number): string {
  let count = all.length;
  while (count > 1 && byBed(all.slice(0, count)).length > longest) count -= 1;
  const more = all.length - count;
  return `${byBed(all.slice(0, count))}${more > 0 ? ` and ${more} more` : ""}`;
}

/** Families whose roots and heads frost makes sweeter. Source: common practice. */
const SWEETENED: readonly Family[] = ["carrot family", "cabbage family"];

function leaveSentences(garden: WholeGarden, left: readonly SowingContext[]): readonly Sentence[] {
  if (left.length === 0) return [];
  const sweet = left.some(({ crop }) => SWEETENED.includes(crop.family));
  const names = listWithin(inWalkingOrder(garden, left), LONGEST.left);
  const more = sweet ? ", and makes roots and cabbages sweeter" : "";
  return [how(`Leave ${names}: a light frost will do no damage${more}.`)];
}

/** Whether it still stands on a day and frost does it no harm that matters. */
function staysOut({ anchors }: WholeGarden, context: SowingContext, day: Day): boolean {
  const { planting, crop, sowing, climate } = context;
  if (climate.underGlass) return false;
  const stage = frostStageOf(context, day);
  const end = anchors.get(anchorKey(planting.key, sowing, "end"));
  if (stage === null || stage === "not up" || (end && end.day <= day)) return false;
  return !endsWithFrost(context) && hardinessOf(crop, stage).kind !== "tender";
}

function say(
  garden: WholeGarden,
  saved: readonly SowingContext[],
  { warned, usual }: { readonly warned: Day; readonly usual: Day },
): readonly Sentence[] {
  const left = garden.contexts.filter((context) => staysOut(garden, context, warned));
  return [
    how(
      `Cover on a frost night, or pick before it: ${listWithin(inWalkingOrder(garden, saved), LONGEST.saved)}.`,
    ),
    how("Have covers ready: two frost nights under them often win two more mild weeks."),
    how("Bring in what is tender in pots."),
    ...leaveSentences(garden, left),
    why(
      "1 autumn in 10 has had its first frost by today; the usual day is about ",
      { day: usual },
      ".",
    ),
  ];
}

/** That frost may come from now on, once for the garden, with what it would take and what may stay, bed by bed. */
export function frostAheadTasks(garden: WholeGarden): readonly TaskOf<"first frost">[] {
  const frost = garden.plan.site.firstFrost;
  const saved = garden.contexts.filter(
    (context) => endsWithFrost(context) && !context.planting.without.includes("first frost"),
  );
  if (!frost || saved.length === 0) return [];
  const warned = firstFrostAt(frost, WARNED_AT);
  return [
    sharedTask(garden.plan.year, null, "first frost", "warning", {
      window: window(warned, warned, warned),
      harm: "tonight",
      rhythm: "warning",
      minutes: 5,
      title: { verb: "Be ready for", object: "the first frost", where: null },
      say: say(garden, saved, { warned, usual: frost.usual }),
      because: [["The usual first frost of autumn is about ", { day: frost.usual }, "."]],
      basis: ["first frost"],
      hangsOn: [...new Set(saved.flatMap((context) => anchorTaskIds(context, "set out")))],
    }),
  ];
}
