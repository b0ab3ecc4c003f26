import type { Vocabulary } from "../model/vocabulary.ts";
import { namedPractice } from "../plan/practices.ts";

/** A line that says what is not so, turned into the deed it denies: `carrots not up yet` into `carrots up`. */
const DENIAL_PATTERNS: readonly (readonly [RegExp, string])[] = [
  [/^(?<name>.+?) (?:is|are) (?:still )?bare$/, "$<name> covered"],
  [
    /^(?<name>.+?) (?:is |are )?still (?:sitting |waiting |sat |stuck |living )?(?:on|in|under) (?:the )?(?:deck|porch|windowsill|sill|garage|kitchen|house|cold ?frame|bench|patio|conservatory|shed)(?: .+)?$/,
    "$<name> planted out",
  ],
  [/^(?:still )?no (?:sign|trace) of (?<name>.+?)(?: yet| so far)?$/, "$<name> up"],
  [
    /^nothing (?:to see |showing |up )?(?:yet )?(?:in|of|from) (?<name>.+?)(?: yet| so far)?$/,
    "$<name> up",
  ],
  [/^no (?<name>.+?) (?<said>up|showing|ripe|in flower)(?: yet)?$/, "$<name> $<said>"],
  [
    /^(?<name>.+?) (?:is |are |was |were |has |have )?(?:still )?(?:not|isn't|aren't|hasn't|haven't|hasn't been|haven't been|have not been) (?:yet )?(?<said>.+?)(?: yet)?$/,
    "$<name> $<said>",
  ],
  [/^(?:have not|haven't|has not|hasn't|not) (?:yet )?(?<said>.+?)(?: yet)?$/, "$<said>"],
];

/** What is missed without a word for what it should be: `no peas yet`. */
const NONE_YET =
  /^(?:(?<nothing>[\w' ]+?),? (?:nowt|zilch|nothing yet|nothing so far)|still waiting (?:on|for) (?:the )?(?<waited>[\w' ]+?)(?: to (?:come up|germinate|show|ripen))?|still no (?<still>[\w' ]+?)(?: yet| so far)?|no (?<name>[\w' ]+?) (?:yet|so far))$/;

/** The name of what is looked for in vain, be it green or fruit; null where a line says nothing of the kind. */
export function missedIn(text: string): string | null {
  const { still, name, waited, nothing } = NONE_YET.exec(text)?.groups ?? {};
  return still ?? name ?? waited ?? nothing ?? null;
}

/** The line without its denial, so that it can be read as the deed it denies; null where it denies nothing in so many words. */
export function deniedIn(text: string): string | null {
  for (const [pattern, turned] of DENIAL_PATTERNS)
    if (pattern.test(text)) return text.replace(pattern, turned).trim();
  return null;
}

const TOO_SMALL =
  /^(?<subject>.+?) (?:is |are )?(?:still )?(?:too (?:small|short|young)|not (?:tall|big|old|ready)(?: enough)?(?: yet)?)(?: still)?(?: to (?:be )?| for )(?<work>.+?)(?: yet)?$/;
const LEFT =
  /^(?:left|leaving|skipped|skipping|no) (?:the |out the )?(?<work>.+?)(?: of| for| the)+ (?:the )?(?<subject>.+?) (?:this|for this) year$/;

const UNTIL = "(?: (?:until|till|til|to|for) (?<until>.+))?";
const WAITS = [
  /^(?:the )?(?<subject>.+?) (?:need|needs|want|wants) (?<work>[a-z]+ing),? (?:remind me |on |by )*(?<until>(?:mon|tues|wednes|thurs|fri|satur|sun)day|tomorrow|next week)$/,
  new RegExp(
    `^(?<work>[a-z]+(?: out| off| on)?) (?:of )?(?:the )?(?<subject>.+?) (?:is |was |are |has been )?(?:put off|postponed|delayed|can wait|must wait|has to wait|will wait)${UNTIL}$`,
  ),
  new RegExp(
    `^(?:put off|postponed|delayed|holding off|held off)(?: on| with)? (?:the )?(?<work>[a-z]+ing(?: out| off| on)?) (?:of )?(?:the )?(?<subject>.+?)${UNTIL}$`,
  ),
];

const SIZE =
  "(?:(?:is|are|still|only|just|far|way|much|a bit|diameter|bulbs|roots|heads|fruits|stems|\\d[\\d.,]* ?(?:cm|mm|in)) )*";
const SMALL = new RegExp(
  `^(?<subject>.+?) ${SIZE}(?:too (?:small|short|young|tiny|early|green|hard)|like (?:grass|golf balls|marbles|pencils|string|peas)|tiny|titchy|the size of (?:marbles|peas|golf balls|pencils|grapes|walnuts|cherries)|pencils)(?: yet| still| for now)?(?: to (?:pick|eat|pull|cut|lift|dig|move|bother with))?$`,
);

const LATER =
  /^(?:(?:leave|leaving|left|give|giving|giving it) (?:the )?(?<left>.+?)|(?<needs>.+?) (?:need|needs|want|wants|can have|get)) (?:for )?(?:another|one more|a few more|two more|a bit more|a bit longer|longer)(?: (?:week|fortnight|days|day|time|couple of weeks))?(?: yet)?$/;

/** What stays where it is for now. */
const LEFT_IN =
  /^(?:leave|leaving|left) (?:the )?(?<left>.+?) in(?: the ground)? (?:till|until|for) .+$/;

/** The name of what is said to be too small for whatever comes next, or to need more time; null where a line says nothing of the kind. */
export function tooSmallIn(text: string): string | null {
  const { left, needs } = (LATER.exec(text) ?? LEFT_IN.exec(text))?.groups ?? {};
  return SMALL.exec(text)?.groups?.subject ?? left ?? needs ?? null;
}

/** The practice of a word for a job, past forms too: `thin`, `thinning`, `thinned`, `weeded`, `covered`. */
function asJob(work: string, vocabulary: Vocabulary): string | null {
  if (/^(?:put|plant|planted|set|go|move) (?:\w+ )?out(?:side|doors)?$/.test(work))
    return namedPractice("set out", vocabulary);
  const forms = [
    work,
    work.replace(/([a-z])\1ed$/, "$1"),
    work.replace(/ed$/, ""),
    work.replace(/d$/, ""),
  ];
  return forms.map((form) => namedPractice(form, vocabulary)).find((name) => name !== null) ?? null;
}

/** A planting by name and the practice that is put off, or left out this year; null where a line says neither. */
export type Postponement = {
  readonly subject: string;
  readonly practice: string;
  readonly leftOut: boolean;
  /** Until when, in the words of the line, where it says so. */
  readonly until?: string;
};

/** A job that a line puts off since its plants are not ready, or leaves out for the year. */
export function postponementIn(text: string, vocabulary: Vocabulary): Postponement | null {
  for (const [pattern, left] of [
    [LEFT, true],
    [TOO_SMALL, false],
    ...WAITS.map((pattern) => [pattern, false] as const),
  ] as const) {
    const { subject, work, until } = pattern.exec(text)?.groups ?? {};
    const practice = work === undefined ? null : asJob(work, vocabulary);
    if (subject !== undefined && practice !== null)
      return { subject, practice, leftOut: left, ...(until === undefined ? {} : { until }) };
  }
  return null;
}

/** What a line takes back, `undo: carrots up`; null where it takes back nothing. */
export function undoneIn(text: string): string | null {
  return /^(?:undo|scratch that|not so)\s*[:,]?\s+(?<what>.+)$/.exec(text)?.groups?.what ?? null;
}
