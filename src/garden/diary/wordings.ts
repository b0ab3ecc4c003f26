import type { Plan } from "../model/plan.ts";
import { withoutLead, withoutTail } from "./asides.ts";
import { withBareNames } from "./bare-names.ts";
import { shorterWordings } from "./wording.ts";

/** Letters of all wordings of a clause that are tried, so that no line takes long: of a longer clause fewer. Source: house rule. */
const MOST_LETTERS = 1200;

/** Words for the soil itself, as a place to put a plant. */
const GROUND =
  "ground|soil|earth|bed|beds|raised bed|raised beds|border|patch|plot|garden|allotment|gap|gaps|the gaps|trench|drill|drills|holes|snow|mud|bags|grow bags|grow ?bags";

/**
 * The ways to read a clause, in the order in which they are tried: as it stands, without what moves nothing before and
 * behind, and with its plantings by their bare names.
 */
export function wordingsOf(clause: string, plans: readonly Plan[]): readonly string[] {
  const plain = withoutLead(clause);
  const texts = [...new Set([clause, plain, withoutTail(plain)])];
  const all = [...texts, ...texts.flatMap((text) => withBareNames(text, plans))];
  const unplaced = all.map((text) => withoutPlace(text, plans));
  const wordings = new Set([clause, ...all, ...unplaced].flatMap(shorterWordings));
  return [...wordings].slice(0, Math.ceil(MOST_LETTERS / (clause.length + 1)));
}

/** Patterns by the plan whose beds are in them. */
const places = new WeakMap<Plan, RegExp>();

function placesOf(plan: Plan): RegExp {
  const known = places.get(plan);
  if (known) return known;
  const beds = plan.beds.map(({ name }) => name.toLowerCase().replace(/[^\w ]/g, "."));
  const pattern = new RegExp(
    `\\b(in|out) ?(?:to|in)? (?:the |our |my |their |its )*(?:${[...beds, GROUND].join("|")})(?= |$)`,
  );
  places.set(plan, pattern);
  return pattern;
}

/** A clause with `in`, and not in which bed: `put lettuce in the south bed` as `put lettuce in`. */
function withoutPlace(text: string, plans: readonly Plan[]): string {
  return plans.reduce((now, plan) => now.replace(placesOf(plan), "$1"), text);
}
