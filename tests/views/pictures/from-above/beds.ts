import type { Bed } from "../../../../src/garden/model/plan.ts";
import { planOn } from "../../../../src/garden/model/season.ts";
import type { BedContent } from "../../../../src/views/pictures/from-above/bed-content.ts";
import { outlineOf } from "../../../../src/views/pictures/from-above/ground.ts";
import type { BedNotes, BedsSketch } from "../../../../src/views/pictures/from-above/sketch.ts";
import type { Standing } from "../../../../src/views/pictures/from-above/standing.ts";
import type { PictureForm } from "../../../../src/views/pictures/sketch.ts";
import { isoDay } from "../../../gardens.ts";
import { sketchOf } from "../drawn.ts";

const HEAD = `garden: Odd
year: 2027
measures: metric
place:
  clock: Europe/Berlin
  latitude: 51
  last frost: about 6 May
  first frost: about 12 Oct
`;

/** Beds that try a drawing, by what is odd about them. */
export const BEDS: Readonly<Record<string, string>> = {
  "a hundred feet beside a pot": `${HEAD}beds:
  Border:
    is: 100 x 3 ft
    crops:
      - carrot: 1 row
      - potato: 60 plants
      - onion: 200 sets
      - sweet corn: 80 plants
  A pot by the door whose name goes on and on for a while:
    is: 1 pot of 10 l
    crops:
      - parsley: 2 plants, bought
`,
  "no sizes, no amounts": `${HEAD}beds:
  Somewhere:
    crops:
      - beet
      - chard
      - quince
  Empty:
    is: 3 x 1 m
`,
  "too full": `${HEAD}beds:
  Small:
    is: 60 x 30 cm
    crops:
      - beet: 4 rows
      - chard: 3 rows
      - parsnip: 2 rows
      - tomato: 6 plants, bought
`,
  "glass, film, pots and cloches": `${HEAD}beds:
  Glass:
    is: greenhouse, 3 x 2.4 m, kept above 5 °C
    crops:
      - tomato: 8 plants, bought
  Film:
    is: tunnel, 6 x 3 m
    crops:
      - cucumber: 6 plants, bought
  Frame:
    is: cold frame, 2.7 x 1.2 m
    crops:
      - radish: 4 rows
  Pots:
    is: 7 pots of 40 l
    crops:
      - pepper: 2 plants, bought
      - basil: 9 plants, bought
  Low:
    is: 4 x 1.2 m
    cover: cloches
    crops:
      - lettuce: 2 rows, every 14 days, 4 times
`,
  "forty beds": `${HEAD}beds:
${Array.from({ length: 40 }, (_, i) => {
  const crops = ["beet: 2 rows", "kale: 6 plants, bought", "leek: 40 plants, bought"];
  const own = crops
    .slice(0, 1 + (i % 3))
    .map((crop) => `      - ${crop.replace(":", `: k${i},`)}\n`);
  return `  Bed ${i + 1}:\n    is: ${[3, 4, 2.4, 6, 10][i % 5]} x ${[1.2, 1, 0.9][i % 3]} m\n    crops:\n${own.join("")}`;
}).join("")}`,
};

/** The beds of a text's garden on a day, for a drawing. */
export function bedsSketchOf(
  text: string,
  on: string,
  { form = "phone", notes = null }: { form?: PictureForm; notes?: BedNotes | null } = {},
): BedsSketch {
  const { year } = sketchOf(text, form, on);
  const day = isoDay(on);
  return { year, plan: planOn(year.plans, day), day, form, inset: false, notes };
}

/** A planting that stands from a day to another. */
export function standing(
  name: string,
  over: Partial<Standing> = {},
  [from, gone]: readonly [string, string] = ["2027-05-01", "2027-08-01"],
): Standing {
  return {
    key: `2027/${name}`,
    name,
    amount: { kind: "rows", count: 1 },
    after: null,
    spacing: { apartCm: 10, rowCm: 20 },
    sowings: [{ from: isoDay(from), gone: isoDay(gone) }],
    ...over,
  };
}

/** The first bed of a sketch. */
export function firstBed({ plan: { beds } }: BedsSketch): Bed {
  const [bed] = beds;
  if (!bed) throw new RangeError("no bed");
  return bed;
}

/** What a bed is drawn with at half a pixel a centimetre, at 100, 100. */
export function contentOf(
  bed: Bed,
  all: readonly Standing[],
  over: Partial<BedContent> = {},
): BedContent {
  const pxPerCm = over.pxPerCm ?? 0.5;
  return {
    ...{ pxPerCm, standing: all, day: isoDay("2027-06-01"), wordsPx: 12, at: { x: 100, y: 100 } },
    note: { bed: bed.key, lines: [], marks: [], freeCm: null },
    outline: outlineOf(bed, { pxPerCm }, { widthPx: 358, gapPx: 14 }),
    ...over,
  };
}
