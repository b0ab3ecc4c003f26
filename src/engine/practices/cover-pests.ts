import { coverNamed, type Pest, type PestCoverName, type Region } from "../../crops/index.ts";

/** What a cover against a pest is for, and what would be under it all the same. */
export type PestFacts = {
  /** A full sentence on what it keeps off. */
  readonly keepsOff: string;
  /** Whether a gap would let them in, so that its edges are buried. */
  readonly sealed: boolean;
  /** Crops from whose soil they hatch the year after, so that a cover would shut them in; null where they come from outside alone. */
  readonly wintersAfter: string | null;
};

/** What each pest does and where it winters. Source: common practice of integrated pest management for covers. */
const PESTS: Readonly<Record<Pest, PestFacts>> = {
  birds: {
    keepsOff: "Birds pull seedlings as they come.",
    sealed: false,
    wintersAfter: null,
  },
  "leaf miners": {
    keepsOff: "It keeps off the flies whose grubs tunnel in the leaves.",
    sealed: true,
    wintersAfter: "beets, chard or spinach",
  },
  "cabbage pests": {
    keepsOff: "It keeps off white butterflies and their caterpillars, and root flies.",
    sealed: true,
    wintersAfter: "cabbages or their kin",
  },
  "flea beetles": {
    keepsOff: "It keeps off beetles that bite small holes into young leaves.",
    sealed: true,
    wintersAfter: "radishes, cabbages or their kin",
  },
  "carrot fly": {
    keepsOff: "It keeps off the fly whose grubs bore into the roots.",
    sealed: true,
    wintersAfter: "carrots, parsnips or celery",
  },
  "cucumber beetles": {
    keepsOff: "It keeps off striped beetles, which bite and bring wilt.",
    sealed: true,
    wintersAfter: "cucumbers, squash or melons",
  },
  "onion fly": {
    keepsOff: "It keeps off the fly whose grubs eat the bulbs.",
    sealed: true,
    wintersAfter: "onions or their kin",
  },
};

/** How cloches are put out and minded. Source: common practice. */
const CLOCHES_HOW =
  "Set cloches over the place, their edges in the soil. Once it grows, open the ends on sunny mornings and shut them by evening.";

/** What a cover is for where its pest does not live: young plants grow on under it all the same. */
const AGAINST_WIND: PestFacts = {
  keepsOff: "It keeps wind and cool nights off the young plants.",
  sealed: false,
  wintersAfter: null,
};

/** Without root flies only what flies in from outside is kept off. */
const AGAINST_BUTTERFLIES: PestFacts = {
  keepsOff: "It keeps off white butterflies and moths, and so their caterpillars.",
  sealed: true,
  wintersAfter: null,
};

/**
 * What a cover is for in a region. Striped cucumber beetles live in North America alone; cabbage root flies and the leaf
 * miners of beets not in Australia and New Zealand. Source: common practice.
 */
export function pestFactsIn(region: Region, pest: Pest): PestFacts {
  if (pest === "cucumber beetles" && region !== "north america") return AGAINST_WIND;
  if (region !== "australia" && region !== "new zealand") return PESTS[pest];
  if (pest === "cabbage pests") return AGAINST_BUTTERFLIES;
  return pest === "leaf miners" ? PESTS.birds : PESTS[pest];
}

/** How a cover is put on; against what crawls and flies its edges are shut with soil. */
export function howCovered(thing: PestCoverName | "cloche", sealed: boolean): string {
  if (thing === "cloche") return CLOCHES_HOW;
  const what = coverNamed(thing).sentence;
  return sealed
    ? `${what} on hoops, clear of the leaves. Bury its edges in soil all round; any gap lets them in.`
    : `${what} on hoops, clear of the leaves, its edges pegged or weighed down all round.`;
}
