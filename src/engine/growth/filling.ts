const INCH = 2.54;
/** Fresh mix and compost settle by about a tenth. Source: usual extension advice, from memory, 10 to 15 %. */
const SETTLES = 1.1;
/** The most that one lift adds [in]: shoots of that height are buried except for their tops. */
const MOST_LIFT_IN = 4;
/** Seed compost that fills a tray [L]: cells, or pots of 3 inches. Source: common practice. */
const LITRES_A_TRAY = { cells: 3, pots: 6 } as const;

/** Soil, mix or compost for a depth [cm] on an area [m²], as bought [L], a tenth more for settling. */
export function soilLitres(areaM2: number, depthCm: number): number {
  return areaM2 * depthCm * 10 * SETTLES;
}

/** Compost for trays of cells and of pots [L], a tenth more for settling. */
export function mixLitres(trays: { readonly cells: number; readonly pots: number }): number {
  return (trays.cells * LITRES_A_TRAY.cells + trays.pots * LITRES_A_TRAY.pots) * SETTLES;
}

/** One lift: how much it raises the soil [in], and the mix it takes [L] for one bag and for all of them. */
export type Lift = {
  readonly inches: number;
  readonly litresABag: number;
  readonly litresAll: number;
};

/** Round bags or pots of one size [cm]. */
export type Bags = { readonly count: number; readonly acrossCm: number; readonly highCm: number };

/**
 * The lifts that fill a bag from its first layer to just under its rim, in order, in whole inches, as even as possible.
 * Together with the first layer they are the bag's height less the rim; heights [cm].
 */
export function bagLifts(bag: Bags, startCm: number, rimCm: number): readonly Lift[] {
  const left = Math.round((bag.highCm - startCm - rimCm) / INCH);
  if (left < 1) return [];
  const number = Math.ceil(left / MOST_LIFT_IN);
  const areaM2 = (Math.PI / 4) * (bag.acrossCm / 100) ** 2;
  return Array.from({ length: number }, (_, i) => {
    const inches = Math.floor(left / number) + (i < left % number ? 1 : 0);
    const litresABag = soilLitres(areaM2, inches * INCH);
    return { inches, litresABag, litresAll: litresABag * bag.count };
  });
}

/** All the mix that bags take from the first layer to the last lift [L], a tenth more for settling; heights [cm]. */
export function mixForBags(bags: Bags, startCm: number, rimCm: number): number {
  const areaM2 = (Math.PI / 4) * (bags.acrossCm / 100) ** 2;
  return (
    soilLitres(areaM2, Math.min(startCm, bags.highCm)) * bags.count +
    bagLifts(bags, startCm, rimCm).reduce((sum, { litresAll }) => sum + litresAll, 0)
  );
}
