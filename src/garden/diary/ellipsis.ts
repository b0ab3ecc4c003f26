import { coverWords } from "../../crops/index.ts";
import type { DiaryContext } from "./clause.ts";
import { namePlaces } from "./names.ts";
import type { Observation, ObservedStage } from "./observation.ts";
import { isPest, namesPest } from "./pests.ts";

/**
 * What stood before a clause: its words, the facts in them, and the name of the one planting it speaks of; null where that
 * is none or several.
 */
export type ClauseBefore = {
  readonly text: string;
  readonly facts: readonly Observation[] | null;
  readonly name: string | null;
};

const PRONOUN = /\b(?:them|those|these|new ones)\b/;
/** `It` as what something was done to. */
const IT = /^((?:\w+ed|put|cut|dug|got|set|sown|hung|picking|cutting|pulling|eating) )it\b/;
const NOT_WORK =
  /^(?<not>not|no) (?<work>planting(?: out)?|sowing|setting out|transplanting)(?= |$)/;
const TOO_SMALL =
  /^(?:still |far |way )*too (?:small|early|young|short|tiny|green)(?: yet| still)?$/;
const HANDS_OFF =
  /^(?:hands off|no cutting|no picking|not cutting(?: any)?|not picking(?: any)?|leave it be|leave (?:it|them)|leaving (?:it|them))(?: this (?:year|season))$/;
const SAID: Readonly<Record<ObservedStage, string>> = {
  up: "up",
  flower: "in flower",
  "first ripe": "ripe",
};
const NOT_EITHER =
  /^(?<name>.+?) (?:are not|is not|aren't|isn't|not|haven't|hasn't)(?: yet| been done)?$/;
const TOO = /^(?:and )?(?:the )?(?<name>.+?),? (?:too|as well|also|likewise|the same)$/;
const THINNINGS = /^(?:the )?(?:first )?thinnings\b/;
const BARE =
  /^(?:delayed|postponed|put off|planted|sown|sowed|thinned|netted|covered|weeded|hoed|staked|transplanted|planted out|potted on|tied in|tied up|picked|pulled(?= )|dug|lifted|cut|harvested|pulled out|ripped out|cleared|fed|earthed up|hilled|pruned|tops (?:removed|pinched out)$|first (?:open )?(?:flowers?|blossoms?|blooms?)$|in (?:flower|bloom)$|flowering$|ripe$|up$)(?= |$)/;
const BOUGHT =
  /^(?:got|bought|took|picked up|grabbed|treated myself to) (?:\w+|a few|a couple|some)$/;
const BOUGHT_THERE = /^(?:bought|got|picked up)(?: \w+)? (?:from|at) .+$/;
const AS_PLANTS =
  /\b(?:plants?|starts|starters|seedlings|plugs|transplants|pots?|punnets?|trays?)\b/;
const NONE_CAME =
  /^(?:nothing|none|not one|no sign|not a single one)(?: of (?:it|them))?(?: has| have)?(?: came| come| showed| germinated)(?: up)?(?: at all)?$/;
const TORN_OUT =
  /^(?:ripped|pulled|dug|tore|threw|chucked|binned|burnt|burned|composted) (?:them|those|it|the lot|everything|all)(?: all)?(?: (?:up|out|away|in|on the fire|on the bonfire))?$/;
const ALL_OF_THEM =
  /^(?:the lot|the whole lot|every last one|every single one|every one|all of them|all of it)$/;
const NO_MORE = /^no more (?<work>cutting|picking|pulling)\b/;
const SPENT =
  /\b(?:gone to (?:flower|seed)|goes in seed|bolted|over|finished|woody|stringy|done)\b/;
const THROWN =
  /^(?:pulled|compost|composted|binned|to the (?:compost|hens|chooks|chickens)|on the (?:heap|compost)|(?:pulled|ripped|tore) (?:them |it )?out(?: for .+)?|out (?:it|they) (?:comes?|came|went|goes?))$/;
const TOPS = /\b(?:tops|haulms?|leaves|foliage|stalks|vines)\b/;
const CANES_TIED = /^(?:the )?(?:canes|new canes|stems|shoots) tied(?: in| up)?$/;
const FIRST_TO_TURN =
  /^(?:the )?first (?:one|few) (?:to|that) (?:turn|turned|colour|coloured|ripen|go red)\b/;
const FOR_TEA =
  /^(?:one|two|three|four|some|a few|a handful|\d+) for (?:tonight|tea|supper|dinner|lunch|the pot)$/;
const TOOK = /^(?:took|had|ate) (?:\d+|one|two|three|four|five|six|ten|a few|some|a couple)$/;
const PART_OF =
  /^(?<part>(?:only |about |nearly |almost |over )*(?:half|some|most|a few|a third|two thirds|a quarter)) (?:of (?:them|it) )?(?<said>(?:are|is|have|has|still) .+|in|out|up|done|sown|planted|sprouted|dead)$/;
const ALL_GONE = /^(?<name>.+?) (?:is |are )?(?:all |completely )*gone$/;
const STRING =
  /^(?:ran|put|tied) (?:a |some )?(?:string|strings|twine) (?:round|around|along)(?: (?:them|it))?$/;
const COVER_ON = new RegExp(
  `^(?:the )?(?<cover>${coverWords("plants").join("|")}) (?:back )?(?<side>on|off)$`,
);
const SOIL_OVER =
  /^(?:drew|pulled|drawn|raked) (?:some |the )?(?:soil|earth) (?:over|up|round)(?: them)?$/;
const THE_TOPS =
  /^(?:nipped|pinched|took|pinching) (?:out |off )?(?:the )?(?:tops|tips)(?: out| off)?$/;
const OVER_AGAIN =
  /^(?:started over|started again|starting again|resown|resowed|re-?drilled|sown again|sowed again)$/;
const IN_IT_GOES = /^in (?:it|they) (?:goes|go|went|all went)$/;
const HEADS = /^(?:\d+ |main )?heads? (?:\d+\/\d+ )?(?:all )?(?:cut|taken|picked)$/;
const NOT_READY = /^not (?:quite )?(?:ready|ripe)(?: yet)?$/;
const LIFT_WAITS =
  /^(?:lift|lifting|harvest|harvesting|digging) (?:postponed|put off|delayed)(?: (?:until|till|to|for))?(?: (?<until>.+))?$/;
const LIFT_ON =
  /^(?:lifting|harvesting|digging|picking) (?:on )?(?<until>(?:the )?\d{1,2}(?:st|nd|rd|th)|(?:mon|tues|wednes|thurs|fri|satur|sun)day)$/;
const NECKS = /^(?:\d+ ?% )?(?:of )?(?:the )?(?:necks|tops) (?:are )?down$/;
const SOIL_TOO = /^in (?:the )?.+ \d+$/;
const LENGTH = /^(?:only |just |about )?[\d.,/½¼¾]+ ?(?:mm|cm|in|inch|inches)$/;
const LONGER =
  /^(?:(?:will |i'll |we'll )?give (?:it|them) |another |they need |it needs |leave (?:it|them) |wait )+(?<time>(?:another |a |an |one |two |three |more |\d+ )*(?:week|weeks|fortnight|days))(?: .+)?$/;

/** The ways to read a clause with what it leaves to the one before, `sowed them again`, `carrots not`; none where it leaves nothing. */
export function completed(
  clause: string,
  before: ClauseBefore,
  context: DiaryContext,
): readonly string[] {
  const { facts, name, text } = before;
  const whole: string[] = [];
  if (LENGTH.test(clause) && /\brain/.test(text))
    whole.push(`rain ${clause.replace(/^[a-z ]+/, "")}`);
  if (SOIL_TOO.test(clause) && text.startsWith("soil")) whole.push(`soil ${clause}`);
  const other = NOT_EITHER.exec(clause)?.groups?.name;
  const too = TOO.exec(clause)?.groups?.name;
  const same = too === undefined ? null : withOtherName(before, too, context);
  if (same !== null) whole.push(same);
  const stage = facts?.find((each) => each.kind === "seen");
  if (other !== undefined && stage) whole.push(`${other} not ${SAID[stage.stage]}`);
  const deed = other === undefined ? null : withOtherName(before, other, context);
  if (deed !== null) whole.push(`not ${deed}`);
  const gone = ALL_GONE.exec(clause)?.groups?.name;
  if (gone !== undefined && isPest(text)) whole.push(`${text} ate the ${gone}`);
  if (name === null) return whole;
  if (PRONOUN.test(clause))
    whole.push(clause.replace(PRONOUN, (said) => (said === "new ones" ? `${name} plants` : name)));
  if (IT.test(clause)) whole.push(clause.replace(IT, `$1${name}`));
  if (NONE_CAME.test(clause)) whole.push(`${name} never came up`);
  if (BOUGHT_THERE.test(clause) || (BOUGHT.test(clause) && AS_PLANTS.test(text)))
    whole.unshift(AS_PLANTS.test(text) ? `bought ${name} plants` : `bought ${name}`);
  if (TORN_OUT.test(clause) && namesPest(text)) whole.unshift(`lost ${name}`);
  if (ALL_OF_THEM.test(clause) && isPest(text)) whole.push(`${text} ate the ${name}`);
  const stop = NO_MORE.exec(clause)?.groups?.work;
  if (stop !== undefined) whole.push(`stopped ${stop} ${name}`);
  if (THROWN.test(clause) && !TOPS.test(text)) {
    if (namesPest(text)) whole.unshift(`lost ${name}`);
    else if (SPENT.test(text) || !clause.startsWith("pulled")) whole.unshift(`pulled ${name} out`);
  }
  if (CANES_TIED.test(clause)) whole.push(`${name} tied in`);
  if (FIRST_TO_TURN.test(clause)) whole.push(`first ripe ${name}`);
  if (FOR_TEA.test(clause)) whole.push(`picked ${name}`);
  if (TOOK.test(clause)) whole.push(`picked ${name}`);
  const { part, said = "" } = PART_OF.exec(clause)?.groups ?? {};
  if (part !== undefined) whole.unshift(`${part} of the ${name} ${said}`);
  if (STRING.test(clause)) whole.push(`${name} supported`);
  const { cover, side } = COVER_ON.exec(clause)?.groups ?? {};
  if (cover !== undefined) whole.push(`${cover} ${side === "on" ? "over" : "off"} ${name}`);
  if (SOIL_OVER.test(clause)) whole.push(`hilled ${name}`);
  if (THE_TOPS.test(clause)) whole.push(`pinched out the tops of ${name}`);
  if (OVER_AGAIN.test(clause)) whole.unshift(`resowed ${name}`);
  if (IN_IT_GOES.test(clause)) whole.push(`${name} in`);
  if (THINNINGS.test(clause)) whole.push(`thinned ${name}`);
  if (HEADS.test(clause)) whole.push(`picked ${name}`);
  if (NOT_READY.test(clause)) whole.push(`${name} not ready`);
  if (NECKS.test(clause)) whole.push(`${name} necks down`);
  const lift = LIFT_WAITS.exec(clause) ?? LIFT_ON.exec(clause);
  if (lift)
    whole.push(
      `harvesting of ${name} put off${lift.groups?.until ? ` until ${lift.groups.until}` : ""}`,
    );
  const time = LONGER.exec(clause)?.groups?.time;
  if (time !== undefined) whole.push(`harvesting of ${name} put off until ${time}`);
  if (NOT_WORK.test(clause)) whole.unshift(clause.replace(NOT_WORK, `$<not> $<work> ${name}`));
  if (TOO_SMALL.test(clause)) whole.push(`${name} too small`);
  if (HANDS_OFF.test(clause)) whole.push(`left the harvest of ${name} this year`);
  if (BARE.test(clause) && !PRONOUN.test(clause) && !IT.test(clause))
    whole.push(`${name} ${clause}`);
  return whole;
}

/** The deed of the clause before, said of another planting. */
function withOtherName(
  { text, facts }: ClauseBefore,
  name: string,
  { plans }: DiaryContext,
): string | null {
  if (!facts?.some(({ kind }) => kind === "done")) return null;
  const places = namePlaces(text, plans);
  const [first] = places;
  const last = places.at(-1);
  return first && last ? `${text.slice(0, first.from)}${name}${text.slice(last.to)}` : null;
}
