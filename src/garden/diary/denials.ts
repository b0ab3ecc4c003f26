import type { Vocabulary } from "../model/vocabulary.ts";
import { namedPractice } from "../plan/practices.ts";

/** A line that says what is not so, turned into the deed it denies: `carrots not up yet` into `carrots up`. */
const DENIAL_PATTERNS: readonly (readonly [RegExp, string])[] = [
  [/^(?:still )?no sign of (?<name>.+?)(?: yet)?$/, "$<name> up"],
  [
    /^nothing (?:to see |showing |up )?(?:yet )?(?:in|of|from) (?<name>.+?)(?: yet)?$/,
    "$<name> up",
  ],
  [/^no (?<name>.+?) (?<said>up|ripe|in flower)(?: yet)?$/, "$<name> $<said>"],
  [
    /^(?<name>.+?) (?:is |are |was |were |has |have )?(?:still )?(?:not|haven't been|have not been) (?:yet )?(?<said>.+?)(?: yet)?$/,
    "$<name> $<said>",
  ],
  [/^(?:have not|haven't|has not|hasn't|not) (?:yet )?(?<said>.+?)(?: yet)?$/, "$<said>"],
];

/** The line without its denial, so that it can be read as the deed it denies; null where it denies nothing in so many words. */
export function deniedIn(text: string): string | null {
  for (const [pattern, turned] of DENIAL_PATTERNS)
    if (pattern.test(text)) return text.replace(pattern, turned).trim();
  return null;
}

const TOO_SMALL =
  /^(?<subject>.+?) (?:is |are )?(?:still )?(?:too (?:small|short|young)|not (?:tall|big|old|ready)(?: enough)?(?: yet)?)(?: to (?:be )?| for )(?<work>.+?)(?: yet)?$/;
const LEFT =
  /^(?:left|leaving|skipped|skipping|no) (?:the |out the )?(?<work>.+?)(?: of| for| the)+ (?:the )?(?<subject>.+?) (?:this|for this) year$/;

/** The practice of a word for a job, past forms too: `thin`, `thinning`, `thinned`, `weeded`, `covered`. */
function asJob(work: string, vocabulary: Vocabulary): string | null {
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
};

/** A job that a line puts off since its plants are not ready, or leaves out for the year. */
export function postponementIn(text: string, vocabulary: Vocabulary): Postponement | null {
  for (const [pattern, left] of [
    [LEFT, true],
    [TOO_SMALL, false],
  ] as const) {
    const { subject, work } = pattern.exec(text)?.groups ?? {};
    const practice = work === undefined ? null : asJob(work, vocabulary);
    if (subject !== undefined && practice !== null) return { subject, practice, leftOut: left };
  }
  return null;
}

const FAILED = [
  /^(?<subject>.+?) (?:has |have |all )*(?:failed|never came up|did not come up|didn't come up|came to nothing|rotted(?: in the ground)?)$/,
  /^nothing came of (?<subject>.+)$/,
];
const LOST = [
  /^(?<subject>.+?) (?:is |are |was |were |has |have |all |been )*(?:lost|dead|died|killed|frosted|pulled up|given up)(?: (?:by|to|in|of) .+)?$/,
  /^(?<subject>.+?) (?:is |are |was |were |has |have |all |been )*(?:eaten|taken|dug up|ruined) by .+$/,
  /^(?:lost|gave up)(?: all)? (?<subject>.+?)(?: (?:to|in) .+)?$/,
  /^(?:slugs|rabbits|deer|mice|voles|birds|frost|hail|blight) (?:ate|took|killed|ruined)(?: all)? (?<subject>.+)$/,
];

/** The planting, by name, that came to nothing or is gone; null where a line tells of no such thing. */
export function endedIn(
  text: string,
): { readonly kind: "failed" | "lost"; readonly subject: string } | null {
  for (const [kind, patterns] of [
    ["failed", FAILED],
    ["lost", LOST],
  ] as const)
    for (const pattern of patterns) {
      const subject = pattern.exec(text)?.groups?.subject;
      if (subject !== undefined) return { kind, subject };
    }
  return null;
}

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

/** What a line takes back, `undo: carrots up`; null where it takes back nothing. */
export function undoneIn(text: string): string | null {
  return /^(?:undo|scratch that|not so)\s*[:,]?\s+(?<what>.+)$/.exec(text)?.groups?.what ?? null;
}
