import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../src/base/days/day.ts";
import { cropOf, isTender } from "../../src/crops/crops.ts";
import { ripeIfStarted } from "../../src/engine/growth/ripe.ts";
import { isoDay } from "../gardens.ts";
import { missesOf } from "./misses.ts";
import { closes, growingAt, on, opens, type Place, VIRGINIA_F } from "./opening.ts";
import { must } from "./ours.ts";
import { type Held, missed, within, yamlOf } from "./read.ts";

type Row = {
  readonly plant?: readonly number[];
  readonly harvest?: readonly number[];
  readonly plant_starts_no_earlier_than?: number;
};
type Chart = { readonly rows: Readonly<Record<string, Row>> };

const { rows: ROWS } = yamlOf<Chart>("virginia-426-331.yaml");
/** A column of the chart [days]. */
const STEP = 10;
/** The place of the chart's worked example. */
const CHART: Place = { latitude: 37.3, last: on("04-15"), first: on("10-20"), normals: VIRGINIA_F };

/** The chart's rows as ours: the crop and how it begins; lima beans are none of ours, wax beans are bush beans. */
const OURS: Readonly<Record<string, readonly [string, "seed" | "plants" | "either"]>> = {
  asparagus: ["asparagus", "either"],
  bean_bush: ["bean", "seed"],
  bean_wax: ["bean", "seed"],
  beet: ["beet", "seed"],
  broccoli_transplants: ["broccoli", "plants"],
  brussels_sprouts_transplants: ["brussels-sprouts", "plants"],
  carrot: ["carrot", "seed"],
};

const ends = (columns: readonly number[]) => [Math.min(...columns), Math.max(...columns)] as const;

describe("Virginia's chart of plantings by the average last frost", () => {
  const opened = Object.entries(OURS).map(([row, [key, way]]) => {
    const day = opens(CHART, key, way);
    return { row, key, way, day, after: day - CHART.last };
  });

  test("is used row by row", () => {
    expect([...Object.keys(OURS), "bean_lima"].sort()).toEqual(Object.keys(ROWS).sort());
  });

  test("opens no later than a step after ours, and never a step after we do", () => {
    const held = opened.map(({ row, after }): Held => {
      const { plant, plant_starts_no_earlier_than: first = 0 } = must(ROWS[row]);
      const span = plant ? ends(plant) : ([first, 0] as const);
      return within(row, [[after, after], span], STEP);
    });
    expect(held).toHaveLength(7);
    expect(missed(held)).toEqual([]);
  });

  test("brings the first harvest of our first planting within its harvests, a step outside at most", () => {
    const held = opened.flatMap(({ row, key, way, day }): readonly Held[] => {
      const { harvest } = must(ROWS[row]);
      if (!harvest || key === "asparagus") return [];
      const growing = growingAt(CHART, key);
      const start = way === "plants" ? "plants" : "seed outdoors";
      const ripe = ripeIfStarted({ ...growing, planting: { ...growing.planting, start } }, day);
      const after = must(ripe) - CHART.last;
      return [within(row, [[after, after], ends(harvest)], STEP)];
    });
    expect(held.length).toBe(5);
    expect(missed(held)).toEqual([]);
  });
});

type Formula = {
  readonly fall_factor_days: number;
  readonly frost_tender_factor_days: number;
  readonly frost_tender_crops_named: readonly string[];
  readonly frost_tender_crops_from_memory: readonly string[];
  readonly worked_example: { readonly bush_bean: Readonly<Record<string, number | string>> };
  readonly arithmetic_checks: {
    readonly rows: readonly { first_frost: string; count_back: number; answer: string }[];
  };
  readonly prince_william_county: {
    readonly latest_sowing: Readonly<Record<string, string>>;
  };
};

const FORMULA = yamlOf<Formula>("virginia-426-334-fall-formula.yaml");

describe("Virginia's counting back from the first frost", () => {
  test("is our days' arithmetic, to the day", () => {
    for (const { first_frost, count_back, answer } of FORMULA.arithmetic_checks.rows)
      expect(isoOf(plus(isoDay(first_frost), -count_back))).toBe(answer);
    const { bush_bean: bean } = FORMULA.worked_example;
    const factors = FORMULA.fall_factor_days + FORMULA.frost_tender_factor_days;
    expect(Number(bean.days_to_harvest) + Number(bean.harvest_period) + factors).toBe(bean.total);
    expect(plus(on(String(bean.first_frost)), -Number(bean.total))).toBe(on(String(bean.plant_by)));
  });

  test("calls tender what we do", () => {
    const names = [...FORMULA.frost_tender_crops_named, ...FORMULA.frost_tender_crops_from_memory];
    const known = names.map((name) => must(cropOf(name === "squash" ? "summer-squash" : name)));
    expect(known.length).toBe(7);
    expect(known.filter((crop) => !isTender(crop))).toEqual([]);
  });

  const COUNTY: Place = {
    latitude: 38.7,
    last: on("04-25"),
    first: on("10-25"),
    normals: VIRGINIA_F,
  };
  const LATEST: Readonly<Record<string, string>> = {
    winter_squash: "winter-squash",
    bush_bean: "bean",
    sweet_corn: "corn",
    summer_squash: "summer-squash",
    cucumber: "cucumber",
  };

  test("gives a county's last sowing days, within two weeks of ours in a usual to a warm season, but for the misses told", () => {
    const { latest_sowing } = FORMULA.prince_william_county;
    expect(Object.keys(LATEST)).toEqual(Object.keys(latest_sowing));
    const held = Object.entries(LATEST).map(([row, key]) => {
      const day = on(must(latest_sowing[row]));
      const [usual, warm] = closes(COUNTY, key);
      return within(
        `${row} latest`,
        [
          [must(usual), must(warm)],
          [day, day],
        ],
        14,
      );
    });
    expect(missed(held)).toEqual(missesOf("virginia-426-334-fall-formula.yaml"));
  });
});
