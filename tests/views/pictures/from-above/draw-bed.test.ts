import { describe, expect, test } from "vitest";
import { drawBed } from "../../../../src/views/pictures/from-above/draw-bed.ts";
import { BEDS, bedsSketchOf, contentOf, firstBed, standing } from "./beds.ts";

const BED = firstBed(bedsSketchOf(BEDS["no sizes, no amounts"] ?? "", "2027-06-20"));

describe("a bed", () => {
  test("shows what stands on the day by its name, and nothing that comes or is gone", () => {
    const all = [
      standing("Beets"),
      standing("Turnips", { after: "2027/Beets" }, ["2027-08-10", "2027-10-01"]),
    ];
    const { svg, named, unnamed } = drawBed(BED, contentOf(BED, all));
    expect(svg.join("")).toContain(">Beets<");
    expect(svg.join("")).not.toContain("Turnips");
    expect([named, unnamed]).toEqual([1, []]);
  });

  test("frames what is marked, and shows its place before it stands", () => {
    const later = standing("Turnips", {}, ["2027-08-10", "2027-10-01"]);
    const note = {
      ...contentOf(BED, []).note,
      marks: [{ planting: later.key, as: "do" } as const],
    };
    const drawn = drawBed(BED, contentOf(BED, [later], { note })).svg.join("");
    expect(drawn).toContain('class="mark-line"');
    expect(drawn).toContain("Turnips");
    expect(drawn).not.toContain("plant-line");
  });

  test("hatches what is to be covered as far as it stands", () => {
    const each = standing("Salad", { amount: { kind: "plants", count: 4 } });
    const note = {
      ...contentOf(BED, []).note,
      marks: [{ planting: each.key, as: "cover" } as const],
    };
    const drawn = drawBed(BED, contentOf(BED, [each], { note })).svg.join("");
    expect(drawn).toContain('fill="url(#beds-cover)"');
  });

  test("calls free ground free where that is the matter", () => {
    const note = { ...contentOf(BED, []).note, freeCm: 90 };
    expect(drawBed(BED, contentOf(BED, [standing("Beets")], { note })).svg.join("")).toContain(
      ">free<",
    );
    expect(drawBed(BED, contentOf(BED, [standing("Beets")])).svg.join("")).not.toContain(">free<");
  });
});
