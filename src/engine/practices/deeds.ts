import type { Deed, Planting } from "../../garden/model/index.ts";

/** Words that may stand between a name and a past form. */
const IS_DONE = "(?:(?:is|are|was|were|all|now|have been|has been) )*";

const NAME = "(?<subject>.+?)";

function patternOf(saying: string): RegExp {
  const [before = "", after] = saying.split("…").map((part) => part.trim());
  if (after === undefined) return new RegExp(`^(?:${before})$`);
  const head = before === "" ? "" : `(?:${before}) `;
  const tail = after === "" ? "" : ` ${IS_DONE}(?:${after})`;
  return new RegExp(`^${head}${NAME}${tail}$`);
}

/**
 * A deed by its sayings, each a regular expression in lower case in which `…` stands for the name: `potted on …`,
 * `… potted on`, `set … out`. Without a name it says all by itself: `drained the lines`. A planting's, of no particular
 * step, where nothing else is given.
 */
export function deed(
  sayings: readonly string[],
  particulars: Partial<Omit<Deed, "patterns">> = {},
): Deed {
  return {
    about: "planting",
    step: null,
    of: {},
    ...particulars,
    patterns: sayings.map(patternOf),
  };
}

/** Both ways to say past forms: before the name, and behind it. */
export function verb(forms: string, formsBehind = forms): readonly string[] {
  return [`${forms} …`, `… ${formsBehind}`];
}

/** Rough words for putting something somewhere, which take their meaning from the particle behind. */
export const PUT =
  "put|got|stuck|bunged|chucked|whacked|popped|shoved|tucked|dibbed|dug|slotted|dropped|plonked|heeled|bedded";

/** How sowing is said, whichever way it begins. */
export const SOWED = verb(
  "(?:sowed|sown|seeded|started|drilled|scattered|broadcast|threw|sprinkled)(?: indoors| outdoors| inside| outside)?",
  "(?:sown|sowed|seeded|started|drilled)(?: indoors| outdoors| inside| outside| in trays| in the greenhouse)?",
);

/** How planting is said, whichever way it begins. */
export const PLANTED = verb(
  "planted(?: up)?",
  "planted(?: up)?|in the ground|gone in|went in|goes in",
);

/** How what goes straight into the ground is said to be there: raised plants may also be in for the night. */
export const IN = ["… in", `(?:${PUT}) … in`, `(?:${PUT}) in …`, "… into the ground", "got … down"];

/** How plants begin that were raised or bought before they go out. */
export const RAISED: readonly Planting["start"][] = ["plants", "seed indoors", "winter-sown"];
