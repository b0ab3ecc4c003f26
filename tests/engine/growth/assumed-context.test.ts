import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { assumedContext } from "../../../src/engine/growth/assumed-context.ts";
import { ripeMilestone } from "../../../src/engine/growth/ripe.ts";
import { anchorOf } from "../../../src/engine/growth/sowing-context.ts";
import { plantingOutDay, settingOutDay } from "../../../src/engine/growth/starting.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { daysOf, type Given, growingOf } from "./growing.ts";

/** The days of the start and of setting out that are supposed, none where there are none. */
function told(name: string, given: Given = {}): readonly (string | null)[] | null {
  const growing = assumedContext(growingOf(QUARRY, name, given));
  if (!growing) return null;
  const days = [anchorOf(growing, "start"), anchorOf(growing, "set out")];
  return days.map((anchor) => anchor && isoOf(anchor.day));
}

describe("a sowing as it would go", () => {
  test("is sown on its reckoned day, on the basis of that", () => {
    const carrot = growingOf(QUARRY, "carrot");
    const { outdoors } = carrot.crop;
    const reckoned = outdoors && plantingOutDay(carrot, outdoors);
    const start = anchorOf(assumedContext(carrot) ?? carrot, "start");
    expect(told("carrot")).toEqual(["2027-04-24", null]);
    expect(start).toMatchObject({ from: "placed", basis: reckoned?.basis, task: null });
  });

  test("is set out on its reckoned day and sown the middle of its weeks before", () => {
    const tomato = growingOf(QUARRY, "tomato");
    const [least, most] = tomato.crop.indoors?.weeksToSettingOut.value ?? [0, 0];
    const out = settingOutDay(tomato)?.day ?? 0;
    const [start, set] = told("tomato") ?? [];
    expect(set).toBe("2027-05-21");
    expect(out - isoDay(start ?? "")).toBe(7 * Math.round((least + most) / 2));
  });

  test("of bought plants is only set out", () => {
    expect(told("tomato", { planting: { start: "plants" } })).toEqual([null, "2027-05-21"]);
  });

  test("in boxes outdoors is sown weeks before the last frost, and set out on its day", () => {
    const [start, out] = told("tomato", { planting: { start: "winter-sown" } }) ?? [];
    expect([start, out]).toEqual(["2027-03-25", "2027-05-21"]);
  });

  test("of cloves goes in for the winter", () => {
    expect(told("garlic")).toEqual(["2027-10-27", null]);
  });

  test("keeps the days that the gardener fixed", () => {
    const fixed = { start: isoDay("2027-03-20"), out: isoDay("2027-05-30") };
    expect(told("tomato", { planting: { fixed } })).toEqual(["2027-03-20", "2027-05-30"]);
  });

  test("is nothing where the facts do not say how it begins that way", () => {
    expect(told("carrot", { crop: { outdoors: null } })).toBeNull();
    expect(told("tomato", { crop: { settingOut: null } })).toBeNull();
  });

  test("is a first sowing, whose harvest can be reckoned, and leaves the growing as it was", () => {
    const second = growingOf(QUARRY, "beet", { sowing: 2 });
    const first = assumedContext(second);
    expect(first?.sowing).toBe(1);
    expect(first && daysOf(ripeMilestone(first))).toBe(
      daysOf(ripeMilestone(growingOf(QUARRY, "beet", { acts: { start: "2027-04-24" } }))),
    );
    expect(second.anchors.size).toBe(0);
  });
});
