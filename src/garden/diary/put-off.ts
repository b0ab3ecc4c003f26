const WORK =
  "(?<work>sow|sowing|plant out|planting out|plant|planting|set out|setting out|transplant|transplanting)";
const UNTIL = "(?: (?:until|till|til|to|for) (?<until>.+))?";
const WEATHER =
  "(?:wet|cold|dry|hot|windy|muddy|soggy|sodden|frozen|hard|sticky|early|boggy|waterlogged|snowy|busy|tired)";
const SODDEN = "(?:wet|muddy|soggy|sodden|frozen|sticky|boggy|waterlogged)";
const TOO = `(?:.+? )?(?:too|far too|still too|much too) ${WEATHER}(?: and (?:too )?${WEATHER})?`;

const PUT_OFF: readonly RegExp[] = [
  new RegExp(`^${TOO} to ${WORK} (?<subject>.+?)${UNTIL}$`),
  new RegExp(`^${TOO} for ${WORK} (?:of )?(?<subject>.+?)$`),
  new RegExp(`^(?:.+? )?too ${SODDEN} for (?<subject>.+?)$`),
  new RegExp(
    `^(?:put off|putting off|postponed|postponing|delayed|delaying|held off|holding off|waiting|held back|holding back|will wait|wait)(?: with| on)? (?:the )?(?:${WORK} (?:of )?)?(?<subject>.+?)${UNTIL}$`,
  ),
  new RegExp(
    `^(?:(?:the )?${WORK} (?:of )?)?(?<subject>.+?) (?:is |are |was |were |has been |have been )?(?:put off|postponed|delayed|pushed back|can wait|must wait|will wait|has to wait|have to wait|will have to wait)${UNTIL}$`,
  ),
  new RegExp(
    `^(?:not|no|no time for|couldn't do the|rained off:?) ${WORK} (?:of )?(?<subject>.+?)(?: yet)?${UNTIL}$`,
  ),
  new RegExp(
    `^${WORK} (?:of )?(?:the )?(?<subject>.+?) (?:is |was )?(?:moved|pushed|shifted)(?: back)?(?: from \\w+)? (?:to|until) (?<until>.+)$`,
  ),
  /^(?<subject>[\w' ]+?) not this week$/,
  /^(?<subject>[\w' ]+?) (?:to follow|to go in|go in|goes in|going in)(?: on| at the| this)? (?<until>(?:mon|tues|wednes|thurs|fri|satur|sun)day|weekend|tomorrow|next week)$/,
  new RegExp(
    `^(?:soil |ground |it's |it is |still )*not (?:yet )?(?:warm|dry) enough (?:yet )?(?:for|to ${WORK}) (?:the )?(?<subject>.+?)(?: yet)?$`,
  ),
  new RegExp(
    `^(?:never got (?:round )?to|didn't get (?:round )?to|haven't got (?:round )?to) (?:${WORK} )?(?:the )?(?<subject>.+?)$`,
  ),
  new RegExp(
    `^(?:will|i'll|we'll) (?:do|${WORK}) (?:the )?(?<subject>.+?) (?:on |this |at the )?(?<until>(?:mon|tues|wednes|thurs|fri|satur|sun)day|weekend|tomorrow)(?: .*)?$`,
  ),
  new RegExp(
    `^(?:couldn't|could not|can't|cannot|didn't get (?:round )?to|did not get to|no time to) ${WORK} (?<subject>.+?)$`,
  ),
];

/** Work on a planting, both by their names, that waits, and until when in the line's words; null where it says neither. */
export type PutOff = {
  readonly subject: string;
  /** The start of the planting where it is not said. */
  readonly work: "sow" | "plant" | "set out" | null;
  readonly until: string | null;
};

/** The sowing, planting or setting out that a line puts off; null where it puts off nothing of the kind. */
export function putOffIn(text: string): PutOff | null {
  for (const pattern of PUT_OFF) {
    const { subject, work, until } = pattern.exec(text)?.groups ?? {};
    if (subject !== undefined) return { subject, work: workOf(work), until: until ?? null };
  }
  return null;
}

function workOf(word: string | undefined): PutOff["work"] {
  if (word === undefined) return null;
  if (word.startsWith("sow")) return "sow";
  return /out|^trans/.test(word) ? "set out" : "plant";
}

/** The same work as done, in the ways to say it, so that its practice is found. */
export function asDone({ subject, work }: PutOff): readonly string[] {
  const ways = { sow: ["sowed"], plant: ["planted"], "set out": ["planted out"] } as const;
  return (work === null ? ["planted", "sowed"] : ways[work]).map((way) => `${way} ${subject}`);
}
