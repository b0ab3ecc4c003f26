import type { NumberRange, WinterLife } from "./facts.ts";
import { commonPractice } from "./figures.ts";

/** What differs from a crop that has to be grown by autumn. */
type MoreLife = {
  /** Weeks before the usual killing frost in which it is sown, planted or set out for the winter: least, most. */
  readonly weeks?: NumberRange;
  readonly daysAfterSpring?: number;
  /** Weeks before the usual first frost in which it goes into its place where it is picked till spring. */
  readonly inPlace?: number;
  readonly sweetened?: boolean;
};

/** How a crop lives through a winter no colder than that [°C]; all its figures are common practice. */
export function winterLife(
  survivesC: number,
  picked: WinterLife["picked"],
  { weeks, daysAfterSpring, inPlace, sweetened = false }: MoreLife = {},
): WinterLife {
  return {
    survivesC: commonPractice(survivesC),
    picked,
    sweetened,
    sownWeeksBefore: weeks === undefined ? null : commonPractice(weeks),
    inPlaceWeeksBefore: inPlace === undefined ? null : commonPractice(inPlace),
    daysAfterSpring: daysAfterSpring === undefined ? null : commonPractice(daysAfterSpring),
  };
}
