/** A day's low and high [°C]. */
export type DayAir = { readonly lowC: number; readonly highC: number };

/** The mean of a day's air, midway between low and high [°C]. */
export const meanC = ({ lowC, highC }: DayAir): number => (lowC + highC) / 2;
