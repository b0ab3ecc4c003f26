import { describe, expect, test } from "vitest";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { ripening } from "../../../src/engine/growth/ripening.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";
import { always, type Given, growingOf } from "./growing.ts";

/** The lane with every day of 70 °F, as a packet of tomatoes takes it, and tomatoes set out on 21 May. */
const OUT = isoDay("2027-05-21");
const warm = { plan: { site: always(celsius(70)) }, acts: { "set out": "2027-05-21" } };
const tomato = (days: number, more: Given = warm) =>
  ripening(growingOf(QUARRY, "tomato", { ...more, planting: { days } }));

/** Days from setting out to the first frost, 2 October. */
const SUMMER = isoDay("2027-10-02") - OUT;

describe("whether it ripens here", () => {
  test("it does where it is ready by the usual first frost", () => {
    expect(tomato(SUMMER)).toEqual({ ripens: true });
  });

  test("it does not a day later, with the longest packet that does", () => {
    const late = tomato(SUMMER + 1);
    expect(late.ripens).toBe(false);
    expect(!late.ripens && late.is).toBe(
      "it is ready about 3 Oct in a usual season, after 2 Oct, and in time only in a warm season",
    );
  });

  test("the longest packet that fits does ripen, and one of a day more does not", () => {
    const late = tomato(SUMMER + 1);
    const fits = late.ripens ? null : late.fits;
    expect(fits).not.toBeNull();
    expect(tomato(fits ?? 0).ripens).toBe(true);
    expect(tomato((fits ?? 0) + 1).ripens).toBe(false);
  });

  test("it does not where winter comes first, and says so", () => {
    const late = tomato(200);
    expect(!late.ripens && late.is).toBe("winter comes before it is ready");
  });

  test("no packet fits where what is left of the year is too short for any", () => {
    const late = tomato(75, { ...warm, acts: { "set out": "2027-09-20" } });
    expect(!late.ripens && late.fits).toBeNull();
  });

  test("it does where nothing freezes, or nothing is known of its beginning yet", () => {
    const mild = { ...always(celsius(70)), lastFrost: null, firstFrost: null };
    expect(tomato(150, { ...warm, plan: { site: mild } })).toEqual({ ripens: true });
    expect(ripening(growingOf(QUARRY, "tomato"))).toEqual({ ripens: true });
  });

  test("it does not where seed never comes up", () => {
    const cold = { ...planOf(QUARRY).site, normals: always(celsius(35)).normals };
    const beet = growingOf(QUARRY, "beet", {
      acts: { start: "2027-05-03" },
      plan: { site: cold },
    });
    expect(ripening(beet)).toEqual({
      ripens: false,
      certain: true,
      is: "the soil is too cold for it to come up",
      fits: null,
    });
  });
});

describe("by a rough curve from the frost dates", () => {
  const rough = (days: number) =>
    ripening(
      growingOf(QUARRY, "tomato", {
        acts: { "set out": "2027-05-21" },
        plan: { site: { ...planOf(QUARRY).site, normals: null } },
        planting: { days },
      }),
    );
  const longest = (() => {
    const never = rough(400);
    return never.ripens ? 0 : (never.fits ?? 0);
  })();

  test("it may not be ready where a warm side of the curve would do", () => {
    const late = rough(longest + 5);
    expect(late.ripens ? null : late.certain).toBe(false);
    expect(late.ripens ? "" : late.is).toContain("may not be ready");
  });

  test("it is certain not to be only where it is so over the whole width", () => {
    const never = rough(400);
    expect(never.ripens ? null : never.certain).toBe(true);
  });
});
