import { describe, expect, test } from "vitest";
import type { BulbKind } from "../../src/crops/facts.ts";
import { bulbKindFor } from "../../src/engine/growth/bulbs.ts";
import { must, ours } from "./ours.ts";
import { yamlOf } from "./read.ts";

type Hours = Readonly<Record<"short" | "intermediate" | "long", readonly (number | null)[]>>;
type Onions = {
  readonly onion_day_length: {
    readonly iowa: { readonly hours: Hours };
    readonly oregon: {
      readonly hours: Hours;
      readonly cultivar_hours: Readonly<Record<string, number>>;
    };
    readonly latitude: {
      readonly short_below_lat: number;
      readonly intermediate_lat: readonly [number, number];
      readonly long_above_lat: number;
    };
  };
};

const { iowa, oregon, latitude } = yamlOf<Onions>("onion-day-length.yaml").onion_day_length;
const KINDS = must(ours("onion").bulbs);
const OURS: Readonly<Record<keyof Hours, BulbKind>> = {
  short: "short-day",
  intermediate: "intermediate",
  long: "long-day",
};
const names = Object.keys(OURS) as (keyof Hours)[];

describe("published day lengths of onions", () => {
  test("are ours as Iowa gives them, each kind till the next begins", () => {
    for (const name of names) expect(KINDS[OURS[name]].value).toBe(iowa.hours[name][0]);
    expect([iowa.hours.short[1], iowa.hours.intermediate[1], iowa.hours.long[1]]).toEqual([
      KINDS.intermediate.value,
      KINDS["long-day"].value,
      null,
    ]);
  });

  test("are within an hour of Oregon's, at both ends", () => {
    for (const name of names)
      oregon.hours[name].forEach((hour, i) => {
        const iowas = iowa.hours[name][i] ?? null;
        if (hour === null || iowas === null) expect(hour).toBe(iowas);
        else expect(Math.abs(hour - iowas)).toBeLessThanOrEqual(1);
      });
  });

  test("hold every cultivar in a class that has begun", () => {
    const cultivars = Object.entries(oregon.cultivar_hours);
    expect(cultivars).toHaveLength(14);
    for (const [name, hours] of cultivars) {
      const kind = names.findLast((each) => (oregon.hours[each][0] ?? 0) <= hours);
      expect(KINDS[OURS[must(kind)]].value, name).toBeLessThanOrEqual(hours);
    }
  });

  test("go by latitudes inside the usual ones", () => {
    const [from, to] = latitude.intermediate_lat;
    expect(bulbKindFor(latitude.long_above_lat)).toBe("long-day");
    expect(bulbKindFor(latitude.short_below_lat)).not.toBe("long-day");
    expect(bulbKindFor(from - 1)).toBe("short-day");
    expect(bulbKindFor(to)).toBe("long-day");
    expect(bulbKindFor(from)).toBe("intermediate");
  });
});
