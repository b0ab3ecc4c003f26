import { describe, expect, test } from "vitest";
import { type Day, partsOf, plus } from "../../src/base/days/day.ts";
import type { NumberRange } from "../../src/crops/facts.ts";
import { ripeMilestone } from "../../src/engine/growth/ripe.ts";
import { autumnPlantingDay, settingOutDay } from "../../src/engine/growth/starting.ts";
import { BOARD, BOARD_OFF_BY_DAYS } from "../../src/engine/practices/board.ts";
import { OVERWINTER } from "../../src/engine/practices/overwinter.ts";
import type { FrostDates, Site } from "../../src/garden/model/plan.ts";
import { growingOf } from "../engine/growth/growing.ts";
import { tasksIn } from "../engine/practices/told.ts";
import { ALONE, isoDay } from "../gardens.ts";
import { missesOf } from "./misses.ts";
import { degrees, inch, must, ours } from "./ours.ts";
import { csvOf, missed, spanOf, within, yamlOf } from "./read.ts";

type Garlic = {
  readonly minnesota: { readonly plant: string; readonly harvest: string };
  readonly otter_tail_mn: {
    readonly depth_in: number;
    readonly apart_in: number;
    readonly mulch_in: NumberRange;
    readonly scapes: string;
  };
  readonly anoka_mn: { readonly plant: string; readonly months_to_harvest: NumberRange };
  readonly general: { readonly cure_weeks: NumberRange };
};
type Timing = {
  readonly garlic: Garlic;
  readonly carrot_board: {
    readonly toronto_master_gardeners: { readonly remove: string };
    readonly idaho: { readonly remove: string };
    readonly general: { readonly board_days: string };
  };
  readonly lettuce: {
    readonly minnesota: { readonly transplant: string };
    readonly bolting: { readonly day_f: string; readonly dormancy_of_seed_soil_f: string };
    readonly cut_and_come_again: { readonly regrow_weeks: NumberRange; readonly cuts: NumberRange };
    readonly succession: string;
  };
  readonly harvest_windows: { readonly rows: Readonly<Record<string, string>> };
};

const FILE = yamlOf<Timing>("crop-timing.yaml");

/** Minneapolis, by its normals of freezes, 15 days either side. */
function minneapolis(): Site {
  const row = must(csvOf("ncei-normals-1981-2010.csv").find((each) => each.state === "MN"));
  const spread = (cell: string | undefined): FrostDates => {
    const usual = isoDay(`2027-${cell?.replace("/", "-")}`);
    return { early: plus(usual, -15), usual, late: plus(usual, 15), given: 3 };
  };
  const { site } = growingOf(ALONE, "garlic").plan;
  return { ...site, lastFrost: spread(row.last32_p50), firstFrost: spread(row.first32_p50) };
}

const garlic = (acts: { readonly start?: string } = {}) =>
  growingOf(ALONE, "garlic", { acts, plan: { site: minneapolis() }, planting: { within: null } });

const monthOf = (day: Day) => partsOf(day).month;

describe("garlic in Minnesota", () => {
  test("is planted one to two weeks after the killing frost, by the facts", () => {
    const [least, most] = spanOf(FILE.garlic.minnesota.plant.split(" ")[0] ?? "");
    expect(must(ours("garlic").overwinter).plantDaysAfterKillingFrost.value).toEqual([
      least * 7,
      most * 7,
    ]);
  });

  test("is planted within 14 days of Anoka's 31 October", () => {
    expect(FILE.garlic.anoka_mn.plant).toContain("Oct 31");
    const day = must(autumnPlantingDay(garlic())).day;
    expect(Math.abs(day - isoDay("2027-10-31"))).toBeLessThanOrEqual(14);
  });

  test("is lifted eight to nine months after planting", () => {
    const planted = garlic({ start: "2027-10-31" });
    const ripe = ripeMilestone(planted);
    const months = "usual" in ripe ? (ripe.usual - isoDay("2027-10-31")) / 30.44 : 0;
    const [least, most] = FILE.garlic.anoka_mn.months_to_harvest;
    expect(months).toBeGreaterThanOrEqual(least);
    expect(months).toBeLessThanOrEqual(most);
  });

  test("is lifted late June to late July", () => {
    expect(FILE.garlic.minnesota.harvest).toBe("late June to late July");
    const ripe = ripeMilestone(garlic({ start: "2027-10-31" }));
    if (!("usual" in ripe)) throw new Error(ripe.none);
    expect(ripe.early).toBeGreaterThanOrEqual(isoDay("2028-06-20"));
    expect(ripe.late).toBeLessThanOrEqual(isoDay("2028-07-31"));
  });

  test("loses its stalks in June", () => {
    expect(FILE.garlic.otter_tail_mn.scapes).toContain("June");
    const stalks = tasksIn(OVERWINTER, garlic({ start: "2027-10-31" })).find(
      ({ step }) => step === "stalks",
    );
    expect(monthOf(must(stalks).window.earliest)).toBe(6);
    expect(monthOf(must(stalks).window.latest)).toBe(6);
  });

  test("is as deep, as far apart and under as much mulch as ours", () => {
    const { outdoors, overwinter } = ours("garlic");
    const { depth_in, apart_in, mulch_in } = FILE.garlic.otter_tail_mn;
    expect(inch(must(outdoors).depthCm.value)[0]).toBeCloseTo(depth_in, 9);
    expect(inch(must(outdoors).apartCm.value)[0]).toBeCloseTo(apart_in, 9);
    expect(inch(must(overwinter).mulchCm.value)).toEqual(mulch_in);
  });

  test("is cured two to four weeks", () => {
    expect(must(ours("garlic").overwinter).cureWeeks.value).toEqual(FILE.garlic.general.cure_weeks);
  });
});

describe("a board over carrots", () => {
  const board = FILE.carrot_board.general.board_days;
  const carrots = (up: string | null) =>
    tasksIn(
      BOARD,
      growingOf(ALONE, "carrot", {
        acts: up === null ? { start: "2027-05-03" } : { start: "2027-05-03", up },
      }),
    );

  test("is off as soon as anything is up, as Toronto and Idaho say", () => {
    expect(FILE.carrot_board.toronto_master_gardeners.remove).toContain("as soon as");
    expect(FILE.carrot_board.idaho.remove).toContain("immediately");
    expect(carrots("2027-05-14").map(({ step, window }) => [step, window.due])).toEqual([
      ["off", isoDay("2027-05-14")],
    ]);
  });

  test("is off by day 21 at the latest", () => {
    expect(board).toContain("(up to 21)");
    expect(BOARD_OFF_BY_DAYS).toBe(21);
    for (const { window } of carrots(null))
      expect(window.latest).toBeLessThanOrEqual(plus(isoDay("2027-05-03"), 21));
  });

  test("is looked under no earlier than day 5, and then daily", () => {
    expect(board).toContain("check daily from day 5-7");
    const look = must(carrots(null).find(({ step }) => step === "look"));
    expect(look.window.due).toBeGreaterThanOrEqual(plus(isoDay("2027-05-03"), 5));
  });
});

describe("lettuce", () => {
  const { cuts, holdsDays } = ours("lettuce").harvest;

  test("grows again in two to three weeks, for two to four cuts", () => {
    const { regrow_weeks, cuts: times } = FILE.lettuce.cut_and_come_again;
    expect(must(cuts).everyDays.value).toEqual(regrow_weeks.map((weeks) => weeks * 7));
    expect(must(cuts).times.value).toEqual(times);
    expect(holdsDays.value).toBeLessThan(14);
  });

  test("sleeps as seed above 75 to 80 °F", () => {
    const asleep = spanOf(FILE.lettuce.bolting.dormancy_of_seed_soil_f.replace("above ", ""));
    const most = degrees(must(must(ours("lettuce").outdoors).soilMaxC).value);
    expect(within("asleep", [most, asleep], 0).holds).toBe(true);
  });

  test("bolts where the mean of its hot days and mild nights lies", () => {
    const { day_f } = FILE.lettuce.bolting;
    const [least, most] = spanOf(day_f.split(" with ")[0]?.replace("above ", "") ?? "");
    const [night] = spanOf(day_f.split("above ").at(-1) ?? "");
    const theirs: NumberRange = [(least + night) / 2, (most + night) / 2];
    const mine = degrees(must(ours("lettuce").limits.heatC).value);
    expect(theirs).toEqual([67.5, 70]);
    expect(within("bolts", [mine, theirs], 0).holds).toBe(true);
  });

  test("goes out within 14 days of Minnesota's late April, but for the miss told", () => {
    expect(FILE.lettuce.minnesota.transplant).toBe("late April-early May");
    const growing = growingOf(ALONE, "lettuce", { plan: { site: minneapolis() } });
    const day = must(settingOutDay(growing)).day;
    const span: NumberRange = [isoDay("2027-04-20"), isoDay("2027-05-10")];
    const held = within("lettuce set out, Minnesota", [[day, day], span], 14);
    expect(missed([held])).toEqual(missesOf("crop-timing.yaml"));
  });

  test("is sown again every 14 days", () => {
    expect(FILE.lettuce.succession).toContain("every 14 days");
    expect(must(ours("lettuce").repeatEveryDays).value).toEqual([14, 14]);
  });
});

describe("harvest windows", () => {
  const { rows } = FILE.harvest_windows;

  test("hold tomatoes four to seven days", () => {
    const [least, most] = spanOf(rows.tomato?.split(" ")[0] ?? "");
    expect(ours("tomato").harvest.holdsDays.value).toBeGreaterThanOrEqual(least);
    expect(ours("tomato").harvest.holdsDays.value).toBeLessThanOrEqual(most);
  });

  test.each([
    ["radish", "radish_days_before_pithy"],
    ["bean", "snap_bean_every"],
    ["cucumber", "cucumber_every"],
    ["pea", "pea_every"],
    ["corn", "sweet_corn_window_days"],
  ])("hold %s as long as they say, or pick it as often", (crop, row) => {
    const [least, most] = spanOf(rows[row]?.split(" ")[0] ?? "");
    expect(ours(crop).harvest.holdsDays.value).toBeGreaterThanOrEqual(least);
    expect(ours(crop).harvest.holdsDays.value).toBeLessThanOrEqual(most);
  });

  test("lift potatoes two weeks after the tops die", () => {
    expect(rows.potato).toBe("2 weeks after vines die");
    expect(ours("potato").harvest.how).toContain("two weeks after the tops die");
  });
});

test("every block of the file is compared", () => {
  expect(Object.keys(FILE)).toEqual(["garlic", "carrot_board", "lettuce", "harvest_windows"]);
});
