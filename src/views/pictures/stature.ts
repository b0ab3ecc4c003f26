import type { Crop } from "../../crops/index.ts";
import type { Life } from "../../engine/index.ts";
import type { Scale } from "./scale.ts";

/** What is eaten of a crop: its leaves, what grows in the ground, or its fruit; its shape is drawn after it. */
export type Eaten = Crop["eaten"];

/**
 * How a kind is drawn: the share of the room's height and of the root's that it reaches, its lobes up to the first harvest,
 * and how deep the notches between them are, as a share of its height. Source: house rule; drawn after lettuce, carrot
 * tops and tomato leaves.
 */
export const STATURE: Readonly<
  Record<Eaten, Readonly<Record<"top" | "root" | "lobes" | "notch", number>>>
> = {
  leaf: { top: 0.88, root: 0.35, lobes: 5, notch: 0.13 },
  root: { top: 0.82, root: 1, lobes: 9, notch: 0.17 },
  fruit: { top: 1, root: 0.45, lobes: 6, notch: 0.15 },
};

/** Share of its height that a plant has when it is set out, and the days in which its new place shows it. Source: house rule. */
const [SET_OUT_AT, SETTLES_DAYS] = [0.22, 6];

/** Share of its height that is left when its time ends. Source: house rule; a picked plant grows thinner. */
const LEFT_AT_END = 0.84;

/**
 * Share of its full height, 0 to 1, that a sowing shows above the soil of its bed on a day: nothing until it is up or
 * set out, all of it at the first harvest, then slowly less until it goes. Parts of days count.
 */
export function heightOn({ out, up, full, ends, gone }: Life, day: number): number {
  const from = out ?? up;
  if (day <= from || day >= gone) return 0;
  const least = out === null ? 0 : SET_OUT_AT * Math.min(1, (day - from) / SETTLES_DAYS);
  if (day < full)
    return least + (1 - least) * Math.sin((Math.PI / 2) * ((day - from) / (full - from))) ** 1.5;
  if (day <= ends) return 1 - (1 - LEFT_AT_END) * (ends > full ? (day - full) / (ends - full) : 0);
  const rest = ends > full ? LEFT_AT_END : 1;
  return rest * (1 - ((day - ends) / (gone - ends)) ** 1.7);
}

/** The position of a lobe's tip or of the notch between two. */
export type Lobe = { readonly day: number; readonly tip: boolean };

/** The tips of its lobes and the notches between them in order, as far as the scale has them; a tip at the first harvest. */
export function lobesOf(life: Life, scale: Scale, eaten: Eaten): readonly Lobe[] {
  const from = life.out ?? life.up;
  const { lobes } = STATURE[eaten];
  const half = (life.full - from) / (2 * lobes + 1);
  const after = Math.floor((life.gone - life.full) / half - 0.5);
  return Array.from({ length: 2 * lobes + 1 + Math.max(0, after) }, (_, i) => ({
    day: life.full + (i - 2 * lobes) * half,
    tip: i % 2 === 0,
  })).filter(({ day }) => day >= scale.from && day <= scale.to);
}
