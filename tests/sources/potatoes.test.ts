import { describe, expect, test } from "vitest";
import { plus } from "../../src/base/days/day.ts";
import type { NumberRange } from "../../src/crops/facts.ts";
import { plantingOutDay } from "../../src/engine/growth/starting.ts";
import { HILL } from "../../src/engine/practices/hill.ts";
import { growingOf } from "../engine/growth/growing.ts";
import { tasksIn } from "../engine/practices/told.ts";
import { ALONE, normalsOf } from "../gardens.ts";
import { inch, must, ours, soilMinF } from "./ours.ts";
import { spanOf, within, yamlOf } from "./read.ts";

type Potatoes = {
  readonly minnesota_2010s: {
    readonly plant: Readonly<Record<"depth_in" | "in_row_in" | "rows_in", NumberRange>>;
    readonly hill: {
      readonly start_when_main_stem_in: number;
      readonly then_times_more: NumberRange;
      readonly total_hilled_by_season_end_in: NumberRange;
    };
  };
  readonly minnesota_2024: { readonly hilling_days_after_planting: NumberRange };
  readonly utah: { readonly plant_days_before_last_frost: NumberRange };
  readonly oklahoma: { readonly hill: { when_plants_in: number; more_times: NumberRange } };
  readonly container_new_hampshire: { readonly cut_hours_before_planting: NumberRange };
  readonly container: Readonly<
    Record<
      "bottom_mix_in" | "cover_in" | "add_when_shoots_in" | "add_leaving_top_leaves_in",
      NumberRange
    >
  > & { readonly repeat: string };
  readonly soil_temperature_f: { readonly plant_from: NumberRange };
};

const FILE = yamlOf<Potatoes>("potatoes.yaml");
const { outdoors, hilling } = ours("potato");
const PLANTED = must(outdoors);
const HILLED = must(hilling);

const inRow = ALONE.replace(
  "  Bags:\n    is: 6 grow bags, 16 in across, 14 in high",
  "  Bags:\n    is: 12 x 4 ft",
);
const hills = (text: string) => {
  const growing = growingOf(text, "potato", { acts: { start: "2027-05-03" } });
  const start = must([...growing.anchors.values()][0]).day;
  return tasksIn(HILL, growing).map((task) => task.window.due - start);
};

describe("Minnesota's potatoes", () => {
  const { plant, hill } = FILE.minnesota_2010s;

  test("are planted as deep and as far apart as ours", () => {
    expect(inch(PLANTED.depthCm.value)).toEqual(plant.depth_in);
    expect(inch(PLANTED.apartCm.value)).toEqual(plant.in_row_in);
    expect(
      within("rows", [inch([PLANTED.rowsCm.value, PLANTED.rowsCm.value]), plant.rows_in], 0).holds,
    ).toBe(true);
  });

  test("are hilled to as much in all", () => {
    expect(inch(HILLED.rowTotalCm.value).map((each) => Math.round(each * 10) / 10)).toEqual(
      hill.total_hilled_by_season_end_in,
    );
  });

  test("are hilled once and then once or twice more, as a row of ours", () => {
    const more = hills(inRow).length - 1;
    expect(more).toBeGreaterThanOrEqual(hill.then_times_more[0]);
    expect(more).toBeLessThanOrEqual(hill.then_times_more[1]);
    expect(FILE.oklahoma.hill.more_times).toEqual(hill.then_times_more);
  });

  test("are first hilled 28 days after planting, give or take seven", () => {
    const [first] = FILE.minnesota_2024.hilling_days_after_planting;
    for (const text of [ALONE, inRow])
      expect(Math.abs((hills(text)[0] ?? 0) - first)).toBeLessThanOrEqual(7);
  });

  test("are hilled again 14 days later, give or take seven", () => {
    const [first, second] = FILE.minnesota_2024.hilling_days_after_planting;
    for (const text of [ALONE, inRow]) {
      const [one = 0, two = 0] = hills(text);
      expect(Math.abs(two - one - (second - first))).toBeLessThanOrEqual(7);
    }
  });
});

describe("the height of shoots at the first hilling", () => {
  test("is between six inches and the foot of Minnesota and Oklahoma", () => {
    const [least, most] = inch(HILLED.shootCm.value);
    expect(least).toBeGreaterThanOrEqual(FILE.container.add_when_shoots_in[0]);
    expect(most).toBeLessThanOrEqual(FILE.minnesota_2010s.hill.start_when_main_stem_in);
    expect(most).toBeLessThanOrEqual(FILE.oklahoma.hill.when_plants_in);
  });
});

describe("potatoes in bags", () => {
  test("are started, covered and filled as ours", () => {
    const { container } = FILE;
    const rounded = (range: NumberRange) => inch(range).map((each) => Math.round(each * 10) / 10);
    expect(rounded(HILLED.bagStartCm.value)).toEqual(container.bottom_mix_in);
    expect(rounded(HILLED.bagCoverCm.value)).toEqual(container.cover_in);
    expect(rounded(HILLED.shootCm.value)).toEqual(container.add_when_shoots_in);
    expect(rounded(HILLED.topsLeftCm.value)).toEqual(container.add_leaving_top_leaves_in);
  });

  test("are filled to within an inch or two of the rim", () => {
    const rim = spanOf(/within (\S+) in/.exec(FILE.container.repeat)?.[1] ?? "");
    expect(inch(HILLED.bagRimCm.value)).toEqual(rim);
  });

  test("are cut one to two days before planting, as our text says two", () => {
    expect(FILE.container_new_hampshire.cut_hours_before_planting).toEqual([24, 48]);
  });
});

describe("the day potatoes go in", () => {
  test("is 14 to 21 days before the last frost where the soil is warm, as Utah's", () => {
    const site = growingOf(ALONE, "potato").plan.site;
    const mild = normalsOf(Array<number>(12).fill(10), Array<number>(12).fill(14));
    const growing = growingOf(ALONE, "potato", { plan: { site: { ...site, normals: mild } } });
    const [least, most] = FILE.utah.plant_days_before_last_frost;
    const { day } = plantingOutDay(growing, PLANTED);
    expect(day).toBeLessThanOrEqual(plus(must(site.lastFrost).usual, -least));
    expect(day).toBeGreaterThanOrEqual(plus(must(site.lastFrost).usual, -most));
  });

  test("waits for soil within 5 °F of the published", () => {
    const { plant_from } = FILE.soil_temperature_f;
    expect(within("soil", [soilMinF("potato"), plant_from], 5).holds).toBe(true);
  });
});

test("every block of the file is compared", () => {
  expect(Object.keys(FILE)).toEqual([
    "minnesota_2010s",
    "minnesota_2024",
    "utah",
    "oklahoma",
    "container_new_hampshire",
    "container",
    "soil_temperature_f",
  ]);
});
