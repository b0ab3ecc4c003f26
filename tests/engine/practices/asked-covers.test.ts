import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { coverAskedFor } from "../../../src/engine/practices/asked-covers.ts";
import { QUARRY } from "../../gardens.ts";
import { type Acts, growingOf } from "../growth/growing.ts";

const offOf = (acts: Acts, thing: Parameters<typeof coverAskedFor>[1] = "fabric") => {
  const [period] = coverAskedFor(growingOf(QUARRY, "carrot", { acts }), thing, 0);
  return period?.off ? isoOf(period.off.window.due) : null;
};

describe("a cover that the plan asks for", () => {
  test("comes off when nine springs in ten have had their last frost, and lies three weeks at the least", () => {
    expect(offOf({ start: "2027-04-20" })).toBe("2027-05-21");
    expect(offOf({ start: "2027-05-15" })).toBe("2027-06-05");
  });

  test("lies till the next spring over what goes in in autumn", () => {
    expect(offOf({ start: "2027-09-10" })?.slice(0, 7)).toBe("2028-05");
  });

  test("is taken off by nobody's day where it is a net", () => {
    expect(offOf({ start: "2027-04-20" }, "net")).toBeNull();
  });

  test("has its own name in ids where the planting has another cover before it", () => {
    const carrots = growingOf(QUARRY, "carrot", { acts: { start: "2027-04-20" } });
    expect(coverAskedFor(carrots, "cloche", 1)[0]?.suffix).toBe("-cloche");
    expect(coverAskedFor(carrots, "cloche", 0)[0]?.suffix).toBe("");
    expect(coverAskedFor(growingOf(QUARRY, "carrot"), "cloche", 0)).toEqual([]);
  });
});
