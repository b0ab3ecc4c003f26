import type { Plan } from "../model/plan.ts";
import { type NamePlace, namePlaces } from "./names.ts";

const NUMBER =
  "(?:\\d+(?:[.,/]\\d+)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|hundred|dozen)";
const PIECE =
  "(?:rows?|plants?|m|metres?|ft|feet|foot|in|cm|lbs?|kg|pots?|trays?|cloves?|tubers?|sets?|slips?|crowns?|hills?|seeds?|punnets?|packs?|six-packs?|flats?|heads?|lot|lots|batch|load|block|patch|line|lines|drill|drills|handfuls?|bunch|bunches|bucket|buckets|bucketfuls?|trugs?|bowls?|bowlfuls?|bags?|packets?|modules?|cells?|sowing|pcs)";
/** What stands before a name and says of which of them, how many, or what they look like. */
const BEFORE = new RegExp(
  `(?:(?:(?:${PIECE}|${NUMBER}|all|both|lots|loads|couple|few) of|the|an?|my|our|his|her|their|your|its|these|those|this|all|both|whole|entire|any|too many|too few|plenty of|every|single|each|another|more|new|old|fresh|young|little|big|tiny|small|poor|lovely|beautiful|huge|own|other|remaining|about|some|only|just|over|nearly|few|couple|several|next year's|last year's|overwintered|overwintering|autumn|winter|spring|summer|early|late|dwarf|indoor|outdoor|seed|${NUMBER}|${PIECE}|x)\\.? )+$`,
);
/** Parts of a plant and other words behind a name that mean no more than the name. */
const BEHIND =
  /^ (?:plants?|seedlings?|babies|plantlets|transplants?|starts|starters|plugs|plug plants|sets|slips|cloves|tubers|crowns|vines|bushes|patch|rows?|crop|bed|lot|shoots|bulbs|cells|modules|leaves|punnet|punnets|plugs)(?= |$)/;
const SEED = /^ seeds?(?= |$)/;
/** Between names that are told together. */
const BETWEEN = /^(?:,? and then |,? and |, | plus | with the )(?:the |my |our |some |a few )*$/;

/** Names side by side in a clause, and where they stand with all that belongs to them. */
type NameGroup = { readonly from: number; readonly to: number; readonly names: readonly string[] };

/**
 * A clause with its plantings by their bare names, `the rest of the tomato babies` as `tomato`, and lists of them put
 * together by `and`; first with, then without the parts of the plant behind. Empty where it names none.
 */
export function withBareNames(clause: string, plans: readonly Plan[]): readonly string[] {
  const groups = groupsOf(clause, namePlaces(clause, plans));
  if (groups.length === 0) return [];
  const written = put(clause, groups, (rest) => rest);
  const bare = put(clause, groups, (rest) => rest.replace(BEHIND, "").replace(SEED, ""));
  return [...new Set([written, bare])];
}

function groupsOf(clause: string, places: readonly NamePlace[]): readonly NameGroup[] {
  const groups: NameGroup[] = [];
  for (const place of places) {
    const last = groups.at(-1);
    const between = last ? clause.slice(last.to, place.from).replace(BEHIND, "") : "";
    const begins = place.from - (BEFORE.exec(clause.slice(0, place.from))?.[0].length ?? 0);
    if (last && BETWEEN.test(between))
      groups[groups.length - 1] = { ...last, to: place.to, names: [...last.names, place.name] };
    else groups.push({ from: Math.max(begins, last?.to ?? 0), to: place.to, names: [place.name] });
  }
  return groups;
}

function put(
  clause: string,
  groups: readonly NameGroup[],
  behind: (rest: string) => string,
): string {
  let text = "";
  let at = 0;
  for (const { from, to, names } of groups) {
    text += `${clause.slice(at, from)}${names.join(" and ")}`;
    const rest = clause.slice(to);
    at = to + rest.length - behind(rest).length;
  }
  return `${text}${clause.slice(at)}`.replace(/\s+/g, " ").trim();
}

const SOME = new RegExp(
  `\\b(?:an?|${NUMBER}|some|several|many|most|few|couple of)(?: of)?(?: the| my| our)?(?: big| small| young| best)? $`,
);

/** Whether the first planting named is counted, so that not all of it is meant: `5 shallots`. */
export function countsFirst(clause: string, plans: readonly Plan[]): boolean {
  const [first] = namePlaces(clause, plans);
  return first !== undefined && SOME.test(clause.slice(0, first.from));
}
