import type { Day } from "../days/day.ts";
import type { Anchor, Ground } from "../growth/anchors.ts";
import { anchorOf, type Growing } from "../growth/growing.ts";
import { isRaised } from "../plan/begin.ts";
import { CARE } from "./care.ts";
import { COVER } from "./cover.ts";
import { FIRST_FROST } from "./first-frost.ts";
import { STAND_THE_WINTER } from "./overwinter.ts";
import { POT_ON } from "./pot-on.ts";
import type { Practice } from "./practice.ts";
import { SUPPORT } from "./support.ts";
import { slugOf } from "./task.ts";
import { WARM_BED } from "./warm-bed.ts";

/** What every garden has at hand already, and what is bought with the seed. Source: house rule. */
const EVERYDAY: readonly string[] = [
  "a watering can",
  "a hoe",
  "a bucket",
  "a knife",
  "shears",
  "string",
  "a pot of soapy water",
  "slips",
  "seed",
  "seed garlic",
  "tubers",
  "sets",
  "crowns",
];

/** Things that a job of a planting needs, with the step that names them. */
export type Want = {
  readonly step: string;
  /** The day it is likely needed, and the first on which it may be. */
  readonly day: Day;
  readonly from: Day;
  readonly things: readonly string[];
  readonly grounds: readonly Ground[];
};

/** Jobs after the start for which something may have to be found. */
const LATER: readonly Practice[] = [
  WARM_BED,
  POT_ON,
  COVER,
  SUPPORT,
  ...CARE,
  FIRST_FROST,
  STAND_THE_WINTER,
];

/** What the day it begins wants, beside what is ordered in winter. */
function thingsToBegin({ planting, bed }: Growing): readonly (readonly [string, string])[] {
  if (planting.start === "seed indoors") return [["sowing", "cells and seed compost"]];
  if (planting.start === "winter-sown") return [["sowing", "lidded boxes and seed compost"]];
  if (isRaised(planting.start)) return [];
  return [
    ...(planting.under.includes("board") ? [["board", "a board as long as the row"] as const] : []),
    ...(bed?.bags ? [["bags", "bags and mix"] as const] : []),
  ];
}

const wantOn = (step: string, { day, grounds }: Anchor, things: readonly string[]): Want => ({
  step,
  day,
  from: day,
  things,
  grounds,
});

/** The jobs of a planting that need something, those left out that it drops. */
function laterWants(growing: Growing): readonly Want[] {
  const { without } = growing.planting;
  return LATER.filter(({ name }) => !without.includes(name))
    .flatMap((practice) => practice.tasks(growing))
    .filter(({ needs }) => needs.length > 0)
    .map(({ practice, step, window: { due, earliest: from }, needs, grounds }) => ({
      step: `${slugOf(practice)}-${step}`,
      day: due,
      from,
      things: needs,
      grounds,
    }));
}

function allWants(growing: Growing): readonly Want[] {
  const start = anchorOf(growing, "start");
  const out = anchorOf(growing, "set out");
  const things = growing.crop.settingOut?.things ?? [];
  const later = laterWants(growing);
  if (growing.planting.inSince !== null) return later;
  return [
    ...(start ? thingsToBegin(growing).map(([step, thing]) => wantOn(step, start, [thing])) : []),
    ...(out ? [wantOn("set-out", out, things)] : []),
    ...later,
  ];
}

/** Each thing at the first day that wants it; everyday tools and days that want nothing new left out. */
function firstOfEach(wants: readonly Want[]): readonly Want[] {
  const named = new Set(EVERYDAY);
  return [...wants]
    .sort((a, b) => a.from - b.from)
    .map((want) => {
      const things = want.things.filter((thing) => !named.has(thing));
      for (const thing of things) named.add(thing);
      return { ...want, things: [...new Set(things)] };
    })
    .filter(({ things }) => things.length > 0);
}

/** What a planting's jobs need beside everyday tools and what is ordered with the seed, each thing once, first wanted first; empty for later sowings. */
export function wantsOf(growing: Growing): readonly Want[] {
  return growing.sowing > 1 ? [] : firstOfEach(allWants(growing));
}
