import { describe, expect, test } from "vitest";
import { type Day, dayOf, isoOf, plus } from "../../src/base/days/day.ts";
import { chanceOfFrostAfter, firstFrostAt, lastFrostAt } from "../../src/engine/climate/frost.ts";
import { deviationsAt } from "../../src/engine/climate/normal.ts";
import type { FrostDates } from "../../src/garden/model/plan.ts";
import { nightDatesOf } from "../../src/garden/station/frost-record.ts";
import {
  dayNumberOf,
  dayOfNumber,
  lastNights,
  MISSING_NIGHTS,
} from "../../src/garden/station/record.ts";
import { lowsFrom, mildBut } from "../engine/climate/series.ts";
import { isoDay } from "../gardens.ts";
import { yamlOf } from "./read.ts";

type Seven = readonly [number, number, number, number, number, number, number];
type Station = { readonly last: Seven; readonly first: Seven; readonly length: Seven };
type Chances = Readonly<Record<number, string>>;

type Definitions = {
  readonly ncei_supplemental_normals: {
    readonly products: { readonly prbfst: string; readonly prblst: string };
    readonly more: { readonly thresholds_f: readonly number[] };
  };
  readonly ncdc_clim20_sup1: { readonly example: string; readonly method: string };
  readonly mrcc: Readonly<Record<"freeze_date" | "early" | "average" | "late", string>>;
  readonly usu: {
    readonly season_split: {
      readonly northern_hemisphere: string;
      readonly southern_hemisphere: string;
    };
    readonly missing_rule: string;
    readonly wraps_year: string;
  };
  readonly minnesota_dnr: { readonly example: string };
  readonly delaware_rec: {
    readonly spring_chance_after: Readonly<Record<number, Chances>>;
    readonly fall_chance_before: Readonly<Record<number, Chances>>;
    readonly normal_check: { readonly text: string };
  };
  readonly eccc_1981_2010: {
    readonly note: string;
    readonly probabilities_pct: Seven;
    readonly stations: {
      readonly brandon_a_mb: Station & {
        readonly mean_last: number;
        readonly mean_first: number;
        readonly mean_length_days: number;
      };
      readonly horburg_ab: Station;
    };
  };
  readonly daily_and_monthly_open_data: { readonly rows: readonly { readonly where: string }[] };
};

const ALL = yamlOf<Definitions>("frost-definitions.yaml");

/** Blocks that hold no definition and no chance of frost: monthly figures, read where degree days are. */
const OF_DEGREE_DAYS = ["eccc_monthly_normals_brandon", "seattle_monthly_mean_from_hourly_normals"];

test("every block of the file is read here, or is one of degree days", () => {
  expect(Object.keys(ALL).sort()).toEqual(
    [
      "ncei_supplemental_normals",
      "ncdc_clim20_sup1",
      "mrcc",
      "usu",
      "minnesota_dnr",
      "delaware_rec",
      "eccc_1981_2010",
      "daily_and_monthly_open_data",
      ...OF_DEGREE_DAYS,
    ].sort(),
  );
});

const three = (early: Day, usual: Day, late: Day): FrostDates => ({ early, usual, late, given: 3 });
const day = (number: number) => plus(isoDay("2026-12-31"), number);

/** Three dates of a normal distribution of that mean and standard deviation [days]. */
function fitted(mean: Day, sd: number): FrostDates {
  const off = deviationsAt(0.9) * sd;
  return three(plus(mean, -off), mean, plus(mean, off));
}

describe("which way a chance runs", () => {
  const spring = three(isoDay("2027-04-20"), isoDay("2027-05-06"), isoDay("2027-05-21"));

  test("is later for the last and earlier for the first at NCEI, so its 90 % last date is our early one", () => {
    const { prblst, prbfst } = ALL.ncei_supplemental_normals.products;
    expect([/or LATER$/.test(prblst), /or EARLIER$/.test(prbfst)]).toEqual([true, true]);
    expect(lastFrostAt(spring, 0.9)).toBe(spring.early);
    expect(firstFrostAt(spring, 0.9)).toBe(spring.late);
  });

  test("is of nights that NCEI asks for too, and 36 °F, the mildest of them", () => {
    expect(
      [36, 32, 28].every((f) => ALL.ncei_supplemental_normals.more.thresholds_f.includes(f)),
    ).toBe(true);
  });

  test("is the same in the worked example of NCDC: nine years in ten freeze after the 90 % date", () => {
    expect(ALL.ncdc_clim20_sup1.example).toMatch(/90 % level .* nine years out of ten .* LATER/);
    expect(chanceOfFrostAfter(spring, lastFrostAt(spring, 0.9))).toBeCloseTo(0.9, 2);
  });

  test("counts years without a freeze with the others, as NCDC's mixture does", () => {
    expect(ALL.ncdc_clim20_sup1.method).toMatch(/freeze\/no-freeze/);
    const nine = [1, 2, 3, 4, 5, 6, 7, 8].map((night) => ({ year: night, night }));
    const none = { year: 9, night: "none" } as const;
    expect(nightDatesOf([...nine, none], Number.NEGATIVE_INFINITY)).toMatchObject({
      usual: 4,
      late: 8,
      years: 9,
    });
  });

  test("is Minnesota's too: 70 % of springs freeze after the date in the column .70", () => {
    const [, share = "", month = "", date = ""] =
      /column (\.\d+) showing (\d+)\/(\d+)/.exec(ALL.minnesota_dnr.example) ?? [];
    const on = dayOf(2027, Number(month), Number(date));
    expect(on).toBe(isoDay("2027-04-19"));
    const dates = fitted(plus(on ?? (0 as Day), deviationsAt(Number(share)) * 10), 10);
    expect(chanceOfFrostAfter(dates, on ?? (0 as Day))).toBeCloseTo(Number(share), 1);
    expect(on ?? 0).toBeLessThan(dates.usual);
  });
});

describe("the definitions of a freeze and of its year", () => {
  test("take a night at the very temperature for one, as the Midwestern centre does", () => {
    expect(ALL.mrcc.freeze_date).toContain("<=");
    const record = lowsFrom("2020-01-01", "2020-12-31", mildBut({ "2020-05-02": 0 }));
    expect(lastNights(record, { atMostC: 0, south: false })).toEqual([{ year: 2020, night: 122 }]);
  });

  test("have early at 10 and late at 90 %, and ours is the middle year where theirs is the mean", () => {
    expect([ALL.mrcc.early, ALL.mrcc.average, ALL.mrcc.late]).toEqual([
      "10th percentile of dates on record",
      "statistical mean",
      "90th percentile of dates on record",
    ]);
    const years = [100, 101, 102, 103, 104, 105, 106, 107, 152].map((night) => ({
      year: night,
      night,
    }));
    expect(nightDatesOf(years, 0)).toMatchObject({ early: 100, usual: 104, late: 152 });
  });

  test("leave a year out at as many missing nights as Utah's", () => {
    expect(ALL.usu.missing_rule).toBe(
      `${MISSING_NIGHTS} or more missing days before the freeze is met: season invalid`,
    );
  });

  test("let a last freeze lie in December before, as Utah's do", () => {
    expect(ALL.usu.wraps_year).toContain("previous December");
    const record = lowsFrom("2019-07-01", "2020-12-31", mildBut({ "2019-12-20": -1 }));
    expect(lastNights(record, { atMostC: 0, south: false })).toContainEqual({
      year: 2020,
      night: -11,
    });
  });

  test("part the years within a week of Utah's midsummer, north and south", () => {
    const { northern_hemisphere: north, southern_hemisphere: south } = ALL.usu.season_split;
    const turn = (split: string, isSouth: boolean) => {
      const from = isoDay(`2020-${split}`);
      const turns = Array.from({ length: 15 }, (_, i) => plus(from, i)).filter((cold) => {
        const record = lowsFrom("2019-01-01", "2021-12-31", (on) => (on === cold ? -1 : 8));
        const found = lastNights(record, { atMostC: 0, south: isSouth });
        return found.some(
          ({ year, night }) => year === (isSouth ? 2019 : 2020) && typeof night === "number",
        );
      });
      return isoOf(turns.at(-1) ?? from);
    };
    expect(turn(north, false)).toBe("2020-07-31");
    expect(turn(south, true)).toBe("2020-01-31");
    expect(isoDay("2020-07-31") - isoDay(`2020-${north}`)).toBeLessThanOrEqual(7);
    expect(isoDay("2020-01-31") - isoDay(`2020-${south}`)).toBeLessThanOrEqual(7);
  });
});

describe("Delaware's rows by a mean and a standard deviation", () => {
  const { spring_chance_after, fall_chance_before, normal_check } = ALL.delaware_rec;
  const [, springSd, fallSd] =
    /sd about ([\d.]+) d .*fall sd about ([\d.]+) d/.exec(normal_check.text) ?? [];
  const rows = (chances: Chances | undefined) =>
    Object.entries(chances ?? {}).map(([percent, on]) => ({
      share: Number(percent) / 100,
      on: isoDay(`2027-${on}`),
    }));
  const middle = (chances: Chances | undefined) => isoDay(`2027-${chances?.[50]}`);

  test("come back within a day in spring, all five", () => {
    const dates = fitted(middle(spring_chance_after[32]), Number(springSd));
    expect(rows(spring_chance_after[32])).toHaveLength(5);
    for (const { share, on } of rows(spring_chance_after[32]))
      expect(Math.abs(lastFrostAt(dates, share) - on)).toBeLessThanOrEqual(1);
  });

  test("come back within a day in autumn, all five", () => {
    const dates = fitted(middle(fall_chance_before[32]), Number(fallSd));
    expect(rows(fall_chance_before[32])).toHaveLength(5);
    for (const { share, on } of rows(fall_chance_before[32]))
      expect(Math.abs(firstFrostAt(dates, share) - on)).toBeLessThanOrEqual(1);
  });
});

describe("Canada's day numbers", () => {
  const { probabilities_pct: percents, stations, note } = ALL.eccc_1981_2010;
  const brandon = stations.brandon_a_mb;

  test("are days of a year without a 29 February, as ours are", () => {
    expect(note).toContain("137 = May 17 in a common year");
    expect(isoOf(dayOfNumber(137)).slice(5)).toBe("05-17");
    expect(dayNumberOf(isoDay("2028-05-17"), 2028)).toBe(137);
  });

  test("fall with the chance in spring and rise with it in autumn, at both stations", () => {
    expect(percents).toEqual([10, 25, 33, 50, 66, 75, 90]);
    for (const { last, first, length } of [brandon, stations.horburg_ab]) {
      expect([...last].sort((a, b) => b - a)).toEqual(last);
      expect([...first].sort((a, b) => a - b)).toEqual(first);
      expect([...length].sort((a, b) => a - b)).toEqual(length);
    }
  });

  /** The rows of first frosts step by 11, 2 and 3 days where a smooth curve steps by 8, 3 and 5. */
  const UNEVEN_DAYS = 3;

  test.each([
    ["Brandon", brandon, 1],
    ["Horburg", stations.horburg_ab, 4],
  ] as const)(
    "of %s come back from three of them by our odds, in autumn within the unevenness of their rows",
    (_, station, lastDays) => {
      const [l10, , , l50, , , l90] = station.last;
      const [f10, , , f50, , , f90] = station.first;
      const [last, first] = [
        three(day(l90), day(l50), day(l10)),
        three(day(f10), day(f50), day(f90)),
      ];
      percents.forEach((percent, i) => {
        expect(
          Math.abs(lastFrostAt(last, percent / 100) - day(station.last[i] ?? 0)),
        ).toBeLessThanOrEqual(lastDays);
        expect(
          Math.abs(firstFrostAt(first, percent / 100) - day(station.first[i] ?? 0)),
        ).toBeLessThanOrEqual(UNEVEN_DAYS);
      });
    },
  );

  test("count a season's length as the days strictly between", () => {
    const { mean_last, mean_first, mean_length_days } = brandon;
    expect(day(mean_first) - day(mean_last) - 1).toBe(mean_length_days);
  });

  test("have a mean that is not the middle year", () => {
    expect(brandon.mean_last).toBeLessThan(brandon.last[3]);
  });
});

test("the daily series that the other frost files were reckoned from is the one named here", () => {
  const { rows } = ALL.daily_and_monthly_open_data;
  expect(rows.filter(({ where }) => where.includes("data/weather.csv"))).toHaveLength(1);
  expect(rows).toHaveLength(4);
});
