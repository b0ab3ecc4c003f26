import { describe, expect, test } from "vitest";
import { quantity, type Unit } from "../../src/base/quantities/quantity.ts";
import { soilLitres } from "../../src/engine/growth/filling.ts";
import { DRIP_EFFICIENCY, dripMinutes, litresOn } from "../../src/engine/growth/watering.ts";
import { must } from "./ours.ts";
import { yamlOf } from "./read.ts";

type Pair = readonly [number, number];
type Water = {
  readonly constants: Readonly<Record<string, number>>;
  readonly drip_penn_state: {
    readonly need_inches_per_week: Pair;
    readonly bed_width_in: number;
    readonly table: readonly {
      readonly flow: string;
      readonly spacing_in: number;
      readonly gph_100ft: number;
      readonly gpm_100ft: number;
      readonly hours_1in: number;
    }[];
    readonly subtract: string;
    readonly split: string;
  };
  readonly drip_ucsc: {
    readonly example_bed: {
      readonly et_in_per_day: number;
      readonly per_week_in: number;
      readonly bed_ft: Pair;
      readonly area_ft2: number;
      readonly loss_gal_per_week: number;
      readonly t_tape: Readonly<Record<string, number>>;
      readonly lines: number;
      readonly emitters_per_bed: number;
      readonly gph_per_bed: number;
    };
    readonly example_bed_hours_per_week: { readonly hours: number };
    readonly note: string;
    readonly example_sprinkler: {
      readonly gpm: number;
      readonly spacing_ft: Pair;
      readonly risers_per_acre: number;
      readonly note: string;
    };
  };
  readonly colorado_drip: {
    readonly application_efficiency: number;
    readonly water_from_upper_half_of_roots_pct: number;
  };
  readonly soil_volume: {
    readonly worked: readonly {
      readonly ft: Pair;
      readonly depth_in: number;
      readonly ft3: number;
      readonly yd3: number;
      readonly litres: number;
    }[];
    readonly settling: { readonly status: string; readonly extra_pct: Pair };
  };
  readonly watering_rule: {
    readonly inches_per_week: number;
    readonly gallons: Readonly<Record<string, number>>;
  };
};

const FILE = yamlOf<Water>("water-and-soil-volume.yaml");

const si = (value: number, unit: Unit) => quantity(value, unit).si;
const feet2 = (value: number) => si(value, "ft²");
const gallons = (litres: number) => litres / si(1, "gal");
const inchMm = si(1, "in") * 10;

/** Hours that lines of so many gallons an hour take for so many inches on so many square feet, nothing lost. */
function hoursFor(inches: number, areaFt2: number, gph: number): number {
  const drip = { needMm: inches * inchMm, areaM2: feet2(areaFt2), flowLh: si(gph, "gal") };
  return dripMinutes({ ...drip, efficiency: 1 }) / 60;
}

/** Whether a figure is met to half a percent. */
const near = (ours: number, printed: number) => Math.abs(ours / printed - 1) <= 0.005;

describe("the sheets' constants", () => {
  const { acre_inch_gal, gal_per_ft2_per_inch, acre_ft2, ft3_per_yd3, gal_per_ft3 } =
    FILE.constants;

  test("are what our litres and square metres give", () => {
    const inchOn = (areaFt2: number) => gallons(litresOn(feet2(areaFt2), inchMm));
    expect(inchOn(1)).toBeCloseTo(must(gal_per_ft2_per_inch), 4);
    expect(inchOn(must(acre_ft2))).toBeCloseTo(27154.29, 2);
    expect(Math.round(inchOn(must(acre_ft2)))).toBe(must(acre_inch_gal));
    expect(inchOn(12)).toBeCloseTo(must(gal_per_ft3), 4);
    expect((si(1, "yd") / si(1, "ft")) ** 3).toBeCloseTo(must(ft3_per_yd3), 9);
    expect(Object.keys(FILE.constants)).toHaveLength(6);
  });
});

describe("Penn State's table of drip tape", () => {
  const { table, bed_width_in, need_inches_per_week, subtract, split } = FILE.drip_penn_state;

  test("is met to a tenth of an hour, row by row", () => {
    const off = table.map((row) => {
      const hours = hoursFor(1, (bed_width_in / 12) * 100, row.gph_100ft);
      return Math.abs(hours - row.hours_1in);
    });
    expect(off).toHaveLength(4);
    expect(Math.max(...off)).toBeLessThanOrEqual(0.1);
  });

  test("has gallons an hour that are sixty times those a minute", () => {
    expect(table.filter((row) => !near(row.gpm_100ft * 60, row.gph_100ft))).toEqual([]);
    expect(table.map(({ flow, spacing_in }) => `${flow} ${spacing_in}`)).toHaveLength(
      new Set(table.map(({ flow, spacing_in }) => `${flow} ${spacing_in}`)).size,
    );
  });

  test("is for the week's need, less rain, in several runs, as ours is", () => {
    expect(need_inches_per_week[0]).toBe(FILE.watering_rule.inches_per_week);
    expect(need_inches_per_week[1]).toBeGreaterThan(need_inches_per_week[0]);
    expect(subtract).toContain("rain inches off the weekly need");
    expect(split).toBe("several applications a week");
  });
});

describe("Santa Cruz's bed of 25 by 4 ft", () => {
  const { example_bed: bed, example_bed_hours_per_week, note } = FILE.drip_ucsc;
  const tape = (key: string) => must(bed.t_tape[key]);

  test("loses its gallons, for one inch and not for the 1.05 of the sheet", () => {
    expect(bed.et_in_per_day * 7).toBeCloseTo(bed.per_week_in, 9);
    expect(bed.bed_ft[0] * bed.bed_ft[1]).toBe(bed.area_ft2);
    const loss = (inches: number) => gallons(litresOn(feet2(bed.area_ft2), inches * inchMm));
    expect(near(loss(1), bed.loss_gal_per_week)).toBe(true);
    expect(note).toContain("62.31 gal is for 1.00 in");
    expect(near(loss(bed.per_week_in), bed.loss_gal_per_week)).toBe(false);
  });

  test("is watered in the hours that were reckoned, to a tenth", () => {
    const hours = hoursFor(1, bed.area_ft2, bed.gph_per_bed);
    expect(Math.abs(hours - example_bed_hours_per_week.hours)).toBeLessThanOrEqual(0.1);
  });

  test("has its flow from the spacing, where the tape's own figure gives less", () => {
    const emitters = (bed.lines * bed.bed_ft[0] * 12) / tape("spacing_in");
    expect(emitters).toBe(bed.emitters_per_bed);
    expect(near(emitters * tape("gph_per_emitter"), bed.gph_per_bed)).toBe(true);
    const tapeGph = tape("gpm_per_100ft_at_10psi") * 60;
    expect(near(tape("emitters_per_100ft") * tape("gph_per_emitter"), tapeGph)).toBe(true);
    expect(near(tapeGph, bed.gph_per_bed)).toBe(false);
    expect(note).toContain("the sheet uses both");
    expect(Object.keys(bed.t_tape)).toHaveLength(4);
  });

  test("has a sprinkler beside it whose figures are slips, and are not ours", () => {
    const { gpm, spacing_ft, risers_per_acre, note: slips } = FILE.drip_ucsc.example_sprinkler;
    expect(risers_per_acre * gpm).toBe(224);
    expect(slips).toContain("the sheet has 227.5 gpm where 64 x 3.5 = 224");
    const risers = must(FILE.constants.acre_ft2) / (spacing_ft[0] * spacing_ft[1]);
    expect(risers).toBeCloseTo(48.4, 9);
    expect(risers).not.toBeCloseTo(risers_per_acre, 0);
  });
});

describe("Colorado's drip tape", () => {
  test("reaches the roots with the share that ours takes", () => {
    const { application_efficiency, water_from_upper_half_of_roots_pct } = FILE.colorado_drip;
    expect(DRIP_EFFICIENCY).toBe(application_efficiency);
    // Most water comes from the upper half of the roots: a reason for short runs, no figure of ours.
    expect(water_from_upper_half_of_roots_pct).toBeGreaterThan(50);
  });
});

describe("soil for beds", () => {
  test("is met to half a percent in feet, yards and litres", () => {
    const { worked } = FILE.soil_volume;
    const wrong = worked.filter(({ ft: [a, b], depth_in, ft3, yd3, litres }) => {
      const ours = litresOn(feet2(a * b), depth_in * inchMm);
      const footL = si(1, "ft") ** 3 / 1000;
      const yardL = si(1, "yd") ** 3 / 1000;
      return !(near(ours, litres) && near(ours / footL, ft3) && near(ours / yardL, yd3));
    });
    expect(worked).toHaveLength(4);
    expect(wrong).toEqual([]);
  });

  test("is bought with so much more as it settles (from memory)", () => {
    const { settling } = FILE.soil_volume;
    const morePct = (soilLitres(1, 10) / litresOn(1, 100) - 1) * 100;
    expect(settling.status).toBe("from memory");
    expect(morePct).toBeGreaterThanOrEqual(settling.extra_pct[0] - 1e-9);
    expect(morePct).toBeLessThanOrEqual(settling.extra_pct[1]);
  });
});

describe("an inch a week", () => {
  test("is the printed gallons on a bed and on a hundred square feet", () => {
    const { gallons: printed, inches_per_week } = FILE.watering_rule;
    const ours = (areaFt2: number) => gallons(litresOn(feet2(areaFt2), inches_per_week * inchMm));
    expect(near(ours(32), must(printed.bed_4x8_ft))).toBe(true);
    expect(near(ours(100), must(printed.per_100_ft2))).toBe(true);
  });
});

test("every block of the file is compared", () => {
  expect(Object.keys(FILE).sort()).toEqual([
    "colorado_drip",
    "constants",
    "drip_penn_state",
    "drip_ucsc",
    "soil_volume",
    "watering_rule",
  ]);
});
