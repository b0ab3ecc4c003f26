/** The practices a plan can name, as tasks carry them. */
export const PRACTICE_NAMES: readonly string[] = [
  "things to have",
  "sow indoors",
  "pot on",
  "harden off",
  "not yet",
  "set out",
  "sow outdoors",
  "plant",
  "board",
  "thin",
  "weed",
  "water",
  "hill",
  "cover",
  "repeat",
  "harvest",
  "first frost",
  "overwinter",
];

const ALSO: Readonly<Record<string, string>> = {
  buying: "things to have",
  shopping: "things to have",
  "sowing indoors": "sow indoors",
  "starting indoors": "sow indoors",
  "start indoors": "sow indoors",
  "potting on": "pot on",
  "potting up": "pot on",
  "pot up": "pot on",
  hardening: "harden off",
  "hardening off": "harden off",
  "setting out": "set out",
  "planting out": "set out",
  "plant out": "set out",
  transplanting: "set out",
  sowing: "sow outdoors",
  sow: "sow outdoors",
  "sowing outdoors": "sow outdoors",
  planting: "plant",
  boards: "board",
  boarding: "board",
  "a board": "board",
  "the board": "board",
  thinning: "thin",
  thinnings: "thin",
  weeding: "weed",
  hoeing: "weed",
  watering: "water",
  irrigating: "water",
  hilling: "hill",
  "hilling up": "hill",
  earthing: "hill",
  "earthing up": "hill",
  "earth up": "hill",
  covering: "cover",
  covers: "cover",
  "a cover": "cover",
  netting: "cover",
  repeats: "repeat",
  repeating: "repeat",
  "sowing again": "repeat",
  harvesting: "harvest",
  picking: "harvest",
  cutting: "harvest",
  frost: "first frost",
  overwintering: "overwinter",
  mulching: "overwinter",
  waiting: "not yet",
};

/** The plain name of the practice that a word of the trade means (`thinning`, `earthing up`), or null. */
export function namedPractice(text: string): string | null {
  const small = text.trim().toLowerCase().replace(/\s+/g, " ");
  if (PRACTICE_NAMES.includes(small)) return small;
  return Object.hasOwn(ALSO, small) ? (ALSO[small] ?? null) : null;
}

/** Every word that `namedPractice` understands. */
export const PRACTICE_WORDS: readonly string[] = [...PRACTICE_NAMES, ...Object.keys(ALSO)];
