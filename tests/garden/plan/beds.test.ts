import { describe, expect, it } from "vitest";
import { least, PLAN, planOf, told } from "./canonical.ts";

const bed = (is: string, more = "") =>
  planOf(least(`beds:\n  Root bed:\n    is: ${is}\n${more}`)).beds[0];
const wrong = (is: string) => told(least(`beds:\n  Root bed:\n    is: ${is}`));

describe("beds", () => {
  it("have a length and a width, the longer side first whichever is written first", () => {
    for (const is of [
      "12 x 4 ft",
      "4 x 12 ft",
      "12 ft x 4 ft",
      "12 by 4 feet",
      "12×4 ft",
      "12' x 4'",
    ]) {
      const { lengthCm, widthCm, kind } = bed(is) ?? {};
      expect([kind, Math.round(lengthCm?.si ?? 0), Math.round(widthCm?.si ?? 0)], is).toEqual([
        "bed",
        366,
        122,
      ]);
    }
    expect(bed("3,6 x 1.2 m")?.lengthCm).toMatchObject({
      si: 360,
      said: { value: 3.6, unit: "m" },
    });
  });

  it("can be bags with their size", () => {
    expect(PLAN.beds[0]).toMatchObject({
      kind: "bags",
      bags: {
        count: 6,
        across: { said: { value: 16, unit: "in" } },
        high: { said: { value: 14 } },
      },
    });
    const plan = planOf(least("beds:\n  Bags:\n    is: 4 pots"));
    expect(plan.beds[0]?.bags).toMatchObject({ count: 4, across: { si: 40.64 } });
    expect(plan.filled.map(({ what }) => what)).toContain("bags of Bags");
  });

  it("can be bags by what one holds, each way that it is said", () => {
    for (const is of [
      "6 grow bags of 10 gal",
      "6 x 10 gal bags",
      "6 10-gallon fabric pots",
      "6 bags, 10 gal each",
      "6 bags, 10 gallons",
    ]) {
      const { bags } = bed(is) ?? {};
      const litres = (Math.PI * ((bags?.across.si ?? 0) / 2) ** 2 * (bags?.high.si ?? 0)) / 1000;
      expect([bags?.count, Math.round(litres * 10)], is).toEqual([6, 379]);
    }
    const plan = planOf(least("beds:\n  Tubs:\n    is: 4 pots, 40 l, 40 cm high"));
    expect(plan.beds[0]?.bags).toMatchObject({ count: 4, high: { si: 40 } });
    expect(plan.beds[0]?.bags?.across.si).toBeCloseTo(35.68, 1);
    expect(plan.filled.find(({ what }) => what === "bags of Tubs")?.value).toBe(
      "35 cm across, 40 cm high",
    );
  });

  it("can be said to be what they are before their size", () => {
    expect(bed("raised bed, 12 x 4 ft")).toMatchObject({ kind: "bed", widthCm: { si: 121.92 } });
  });

  it("have covers, a mulch and what stands there, which its plantings have too", () => {
    const plan = planOf(
      least(
        "beds:\n  A:\n    cover: an insect net and cloches\n    mulch: straw\n    has: a trellis\n    crops:\n      - pea: 2 rows, under fabric\n      - kale: 3 plants, mulched with leaves, with collars\n  B:\n    mulch: none\n    crops:\n      - pea: 1 row, called bare",
      ),
    );
    expect(plan.beds[0]).toMatchObject({
      covers: ["net", "cloche"],
      mulch: "straw",
      has: ["trellis"],
    });
    expect(plan.beds[1]).toMatchObject({ covers: [], mulch: null, has: [] });
    expect(plan.plantings).toMatchObject([
      { under: ["fabric", "net", "cloche"], mulch: "straw", has: ["trellis"] },
      { under: ["net", "cloche"], mulch: "leaves", has: ["collars", "trellis"] },
      { under: [], mulch: null, has: [] },
    ]);
    expect(told(least("beds:\n  A:\n    cover: insct net\n    has: a trelis"))).toEqual([
      "unknown-word@9:12",
      "unknown-word@10:10",
    ]);
  });

  it("can be in the greenhouse", () => {
    expect(bed("greenhouse, 8 x 6 ft")).toMatchObject({
      kind: "greenhouse",
      widthCm: { said: { value: 6 } },
    });
    expect(bed("greenhouse")).toMatchObject({ kind: "greenhouse", house: "glass", lengthCm: null });
    expect(bed("tunnel, 6 x 3 m")).toMatchObject({ kind: "greenhouse", house: "film" });
    expect(bed("12 x 4 ft")).toMatchObject({ kind: "bed", house: null });
  });

  it("can be of no known size", () => {
    expect(planOf(least("beds:\n  Root bed:")).beds[0]).toMatchObject({
      key: "root-bed",
      kind: "bed",
      lengthCm: null,
      warmed: false,
    });
  });

  it("are warmed by film or fabric", () => {
    expect(bed("12 x 4 ft", "    warmed by: black film")?.warmed).toBe(true);
    expect(told(least("beds:\n  A:\n    warmed by: blck film"))).toEqual(["unknown-word@9:16"]);
  });

  it("keep the key of their first name", () => {
    expect(bed("12 x 4 ft", "    was: Old bed")).toMatchObject({
      key: "old-bed",
      name: "Root bed",
    });
    expect(told(least("beds:\n  Root bed:\n  root BED:"))).toEqual(["alike@9:3"]);
  });

  it("are refused without units, with one side, or as nothing known, at the place", () => {
    expect(wrong("12 x 4")).toEqual(["quantity-unclear@9:9"]);
    expect(wrong("12 x 4 gal")).toEqual(["quantity-unclear@9:9"]);
    expect(wrong("0 x 4 ft")).toEqual(["quantity-unclear@9:9"]);
    expect(wrong("12 ft")).toEqual(["unknown-word@9:9"]);
    expect(wrong("12 x 4 ft, sunny")).toEqual(["unknown-word@9:20"]);
    expect(wrong("6 grow bags, 16 across, 14 in high")).toEqual(["quantity-unclear@9:22"]);
    expect(wrong("0 bags")).toEqual(["out-of-range@9:9"]);
  });
});
