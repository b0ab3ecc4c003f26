import { ANY_PEST as PESTS } from "./pests.ts";

const ATE =
  "(?:ate|dried|dried out|dried up|yanked out|pulled out|burned|burnt|scorched|cooked|fried|wiped out|stripped|has eaten|have eaten|took|has taken|have taken|killed|ruined|destroyed|flattened|finished(?: off)?|dug up|carried off|got)";
/** Words of eating and taking, which of plants that stand for years may be the fruit alone. */
const EATING = /\b(?:ate|eaten|took|taken|got|had)\b/;

/** Whether a loss may be of the fruit, and the plants stand. */
export const mayBeFruit = (text: string): boolean => EATING.test(text);

/** What is left of a loss when it is only some of them. */
const SOME =
  /^(?:(?:a|an|one|some|half|most|many|part|several|few|two|three|four|five|six|\d+|leaves|tips|tops|fruits?|flowers)\b|the (?:leaves|tips|tops|fruits?|flowers)\b|.+ (?:leaves|tips|tops|fruits?|flowers)$)/;

const SEED = "(?<subject>.+?) seeds?";
const FAILED = [
  /^(?<subject>.+?) (?:has |have |all )*(?:failed|never (?:came up|germinated|showed|sprouted|came through|took)|(?:did not|didn't) (?:come up|germinate|sprout|show|come through|take)|came to nothing|no show|a no show|(?:is |are |was |were )?a (?:complete |total )?failure|rotted(?: off| away)?(?: in the ground)?)$/,
  /^nothing came of (?<subject>.+)$/,
  /^(?:sowing|planting) (?:of )?(?<subject>.+?) (?:has |have |all )*failed$/,
  new RegExp(`^${PESTS} (?:${ATE}|had)(?: all)? ${SEED}$`),
  new RegExp(`^${PESTS} (?:carried|dug|took|scratched|pulled)(?: all)? ${SEED} (?:off|up|out)$`),
  new RegExp(`^${PESTS} (?:scratched|pulled) up(?: all)? (?<subject>.+)$`),
  new RegExp(`^${PESTS} (?:scratched|pulled)(?: all)? (?<subject>.+?) (?:up|out)$`),
  /^(?<subject>.+?) seeds? (?:is |are |was |were |has |have |all |been )*(?:eaten|taken|dug up|gone|washed (?:out|away)|rotted)(?: by .+)?$/,
];
const LOST = [
  /^(?:they|someone|somebody|thieves|vandals|kids) (?:took|stole|nicked|pinched|swiped|had)(?: all)? (?<subject>(?:the|our|my) .+)$/,
  /^(?<subject>.+?) (?:is |are |was |were |has |have |all |been )*(?:lost|dead|died|killed|frosted|pulled up|given up|(?:black |brown |green )?mush|toast|goners?|a goner|blackened|done for|wiped out|kaput|had it|no more)(?: (?:by|to|in|of) .+)?$/,
  new RegExp(
    `^(?<subject>.+?) (?:is |are |was |were |has |have |all |been )*(?:eaten|taken|dug up|ruined|killed|destroyed) by (?:an? )?${PESTS}$`,
  ),
  new RegExp(
    `^(?<subject>.+?) (?:is |are |was |were |has |have |all |been )*(?:gone|lost) to ${PESTS}$`,
  ),
  /^(?:lost|gave up)(?: on)?(?: all)? (?<subject>.+?)(?: (?:to|in) .+)?$/,
  new RegExp(`^${PESTS} (?:${ATE}|had all)(?: all)? (?<subject>.+)$`),
  new RegExp(`^${PESTS} (?:had|have had|has had) (?<subject>the .+)$`),
  new RegExp(`^${PESTS} dug(?: all)? (?<subject>.+?) (?:up|out)$`),
];
const OMITTED = [
  /^no more (?<subject>[\w' ]+)$/,
  /^(?<subject>.+?) (?:is |are )?(?:discontinued|dropped|struck|crossed off|off the list)(?: from (?:the )?plan)?$/,
  /^(?:there is |there's )?(?:no|not a|not one|not a single) (?<subject>[\w' ]+?) left(?: at all)?$/,
  /^(?:there is |there's )?nothing left of (?<subject>.+)$/,
  /^(?:is |are )?(?:not growing|skipped|skipping|leaving out|left out|not bothering with|giving up on) (?:the |any )?(?<subject>.+?) this (?:year|season)$/,
  /^(?:don't think (?:i'm|we're)|won't be|not|am not|are not|aren't) (?:doing|growing|sowing|planting|having|bothering with) (?:the |any )?(?<subject>.+?) this (?:year|season)$/,
  /^(?:will |we'll |i'll )?(?:give|gave|giving) (?<subject>.+?) a (?:miss|rest)(?: this (?:year|season))?$/,
  /^no (?<subject>[\w' ]+?) this (?:year|season|summer|winter|spring|autumn)$/,
];

/** The planting, by name, that came to nothing or is gone; null where a line tells of no such thing, or of some of it alone. */
export function endedIn(
  text: string,
): { readonly kind: "failed" | "lost"; readonly subject: string } | null {
  for (const [kind, patterns] of [
    ["failed", FAILED],
    ["lost", [...OMITTED, ...LOST]],
  ] as const)
    for (const pattern of patterns) {
      const subject = pattern.exec(text)?.groups?.subject;
      if (subject !== undefined && !SOME.test(subject)) return { kind, subject };
    }
  return null;
}

/** Whether a planting is left out for the year, which is told by what is not done. */
export const isOmitted = (text: string): boolean => OMITTED.some((pattern) => pattern.test(text));

const MOVED = [
  /^moved (?<subject>.+?) (?:in)?to (?<bed>.+)$/,
  /^(?<subject>.+?) (?:is |are |was |were )?moved (?:in)?to (?<bed>.+)$/,
];

/** The planting and the bed, by name, that it was moved to; null where nothing was moved. */
export function movedIn(text: string): { readonly subject: string; readonly bed: string } | null {
  for (const pattern of MOVED) {
    const { subject, bed } = pattern.exec(text)?.groups ?? {};
    if (subject !== undefined && bed !== undefined)
      return { subject, bed: bed.replace(/^the /, "") };
  }
  return null;
}
