import { type Day, plus } from "../../src/base/days/day.ts";
import { type Case, casesOf } from "../hindcast/hindcast.ts";
import { observedIn, type Station } from "../hindcast/station.ts";
import { observedOn } from "./weather.ts";

/** Days before a stage was reached on which it is asked when it will be. */
export const LEADS = [30, 14, 7, 2] as const;

/** One of them. */
export type Lead = (typeof LEADS)[number];

/** How far a stage's told day was off so many days before it came [days]: by the usual curve, and with the season so far known. */
export type Asked = Pick<Case, "crop" | "stage"> & {
  readonly lead: Lead;
  readonly byCurve: number;
  readonly byWeather: number;
};

/** Every stage of a year of a station that weather decides, asked about at each lead. */
export function askedIn(
  station: Station,
  year: number,
  leads: readonly Lead[] = LEADS,
): readonly Asked[] {
  const truth = observedIn(station, year);
  const seed = `${station.name} ${year}`;
  const lived = casesOf(station, year, { observed: truth }).filter(({ settled }) => !settled);
  const told = new Map<Day, ReadonlyMap<string, Day | null>>();
  const toldOn = (asOf: Day) => {
    const there = told.get(asOf);
    if (there) return there;
    const cases = casesOf(station, year, { observed: observedOn(truth, asOf, seed) });
    const days = new Map(cases.map((each) => [keyOf(each), each.came]));
    told.set(asOf, days);
    return days;
  };
  return lived.flatMap((each) =>
    leads.flatMap((lead): readonly Asked[] => {
      const { came, usual, crop, stage } = each;
      const day = came === null ? null : toldOn(plus(came, -lead)).get(keyOf(each));
      if (came === null || day == null) return [];
      const byCurve = Math.abs(usual - came);
      return [{ crop, stage, lead, byCurve, byWeather: Math.abs(day - came) }];
    }),
  );
}

const keyOf = ({ crop, stage }: Pick<Case, "crop" | "stage">) => `${crop} ${stage}`;
