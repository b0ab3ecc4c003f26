import { describe, expect, it } from "vitest";
import { heatIn, houseIn } from "../../../src/garden/plan/houses.ts";
import { least, planOf, told } from "./canonical.ts";

const glass = (is: string, place = "") => planOf(least(`${place}beds:\n  Glass:\n    is: ${is}\n`));
const heatOf = (is: string) => glass(is).beds[0]?.keptAbove?.si ?? null;

describe("houses", () => {
  it("are greenhouses or tunnels of film by the words of the trade", () => {
    for (const text of ["greenhouse", "a glasshouse", "the green house"])
      expect(houseIn(text), text).toEqual({ of: "glass", heat: null });
    for (const text of ["tunnel", "polytunnel", "a hoop house", "high tunnel"])
      expect(houseIn(text), text).toEqual({ of: "film", heat: null });
    expect(houseIn("an unheated tunnel")).toEqual({ of: "film", heat: { keptAbove: null } });
    for (const text of ["cold frame", "a coldframe", "unheated cold frame"])
      expect(houseIn(text), text).toEqual({ of: "frame", heat: { keptAbove: null } });
    expect(houseIn("12 x 4 ft")).toBeNull();
  });

  it("are heated, or said not to be", () => {
    for (const text of ["unheated", "no heater", "without heating", "cold"])
      expect(heatIn(text), text).toEqual({ keptAbove: null });
    for (const text of ["kept above 5 °C", "heated to 5 °C", "above 5 °C"])
      expect(heatIn(text), text).toMatchObject({ keptAbove: { si: 5 } });
    expect(heatIn("heated to 5 m")).toBe("unclear");
    expect(heatIn("3 x 2.4 m")).toBeNull();
  });

  it("are cold frames too, which nothing heats, whatever the place's own house is kept at", () => {
    const bed = glass("cold frame, 6 x 3 ft", "").beds[0];
    expect(bed).toMatchObject({ kind: "greenhouse", house: "frame", keptAbove: null });
    expect(bed?.lengthCm?.si).toBeCloseTo(182.88, 9);
  });

  it("stand in a plan with heat and size in any order", () => {
    const bed = glass("greenhouse, kept above 5 °C, 3 x 2.4 m").beds[0];
    expect(bed).toMatchObject({ kind: "greenhouse", keptAbove: { si: 5 }, lengthCm: { si: 300 } });
    expect(heatOf("tunnel, unheated")).toBeNull();
    expect(told(least("beds:\n  A:\n    is: greenhouse, heated to 5 m\n"))[0]).toMatch(
      /^quantity-unclear/,
    );
    expect(told(least("beds:\n  A:\n    is: greenhouse, 3 x 2 m, blue\n"))[0]).toMatch(
      /^unknown-word/,
    );
  });

  it("that say nothing of a heater have none, and the plan's list of defaults says so", () => {
    const plan = glass("greenhouse, 3 x 2.4 m");
    expect(plan.beds[0]?.keptAbove).toBeNull();
    expect(plan.filled).toContainEqual(
      expect.objectContaining({ what: "heat in Glass", value: "none" }),
    );
    expect(glass("greenhouse, unheated").filled.map(({ what }) => what)).not.toContain(
      "heat in Glass",
    );
  });
});
