import type { Plan } from "../model/plan.ts";
import { withoutLead, withoutTail } from "./asides.ts";
import { withBareNames } from "./bare-names.ts";
import { shorterWordings } from "./wording.ts";

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
  const places = [...texts, ...texts.flatMap((text) => withBareNames(text, plans))].map((text) =>
    withoutPlace(text, plans),
  );
  return [
    ...new Set([
      ...shorterWordings(clause),
      ...[...texts, ...texts.flatMap((text) => withBareNames(text, plans)), ...places].flatMap(
        shorterWordings,
      ),
    ]),
  ];
}

/** A clause with `in`, and not in which bed: `put lettuce in the south bed` as `put lettuce in`. */
function withoutPlace(text: string, plans: readonly Plan[]): string {
  const beds = plans.flatMap((plan) => plan.beds.map(({ name }) => name.toLowerCase()));
  const names = [...beds, ...GROUND.split("|")].map((each) => each.replace(/[^\w ]/g, "."));
  return text.replace(
    new RegExp(
      `\\b(in|out) ?(?:to|in)? (?:the |our |my |their |its )*(?:${names.join("|")})(?= |$)`,
    ),
    "$1",
  );
}
