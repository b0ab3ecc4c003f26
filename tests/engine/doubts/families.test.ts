import { describe, expect, it } from "vitest";
import { familyDoubts } from "../../../src/engine/doubts/families.ts";
import { least, planOf } from "../../garden/plan/canonical.ts";

const year = (y: number, crops: string) => planOf(least(crops).replace("2027", String(y)));
const bed = (crop: string, name = "South bed", is = "12 x 4 ft") =>
  `beds:\n  ${name}:\n    is: ${is}\n    crops:\n      - ${crop}`;
const codes = (...plans: readonly ReturnType<typeof year>[]) =>
  familyDoubts(plans).map(({ code, at }) => `${code}@${at.line}`);

describe("a family back in its bed", () => {
  it("is doubted the year after, whatever the order of the plans", () => {
    const plans = [year(2027, bed("tomato")), year(2026, bed("potato"))];
    expect(codes(...plans)).toEqual(["family-too-soon@11"]);
    expect(familyDoubts(plans)[0]?.is).toBe(
      "South bed had potato last year (plans/quarry-lane/2027.yaml, line 11), and tomato is of the nightshade family too",
    );
  });

  it("is doubted while it should still be away, with the place where it stood", () => {
    const back = (y: number, crop: string) => familyDoubts([year(y, bed(crop)), NOW]);
    const NOW = year(2027, bed("tomato"));
    expect(back(2024, "potato")[0]?.is).toContain("had potato in 2024 (");
    expect(back(2024, "potato")[0]?.shouldBe).toContain("3 years without that family");
    expect(back(2023, "potato")).toEqual([]);
    expect(back(2024, "beet")).toEqual([]);
  });

  it("is no doubt in another bed, or in bags", () => {
    expect(codes(year(2026, bed("potato")), year(2027, bed("tomato", "North bed")))).toEqual([]);
    expect(
      codes(
        year(2026, bed("potato", "Bags", "6 bags")),
        year(2027, bed("potato", "Bags", "6 bags")),
      ),
    ).toEqual([]);
  });

  it("is seen where the bed has a new name", () => {
    const later = bed("tomato").replace("South bed:", "Long bed:\n    was: South bed");
    expect(codes(year(2026, bed("potato")), year(2027, later))).toEqual(["family-too-soon@12"]);
  });

  it("is doubted where garlic follows the garlic lifted from its bed that summer", () => {
    const two = (next: string, where = "") => `beds:
  South bed:
    is: 12 x 4 ft
    crops:
      - garlic: 40 cloves, in since 14 Oct 2026
${where}      - name: next garlic
        crop: ${next}`;
    const again = "garlic\n        cloves: 40\n        plant: this October";
    const [doubt, ...more] = familyDoubts([year(2027, two(again))]);
    expect(more).toEqual([]);
    expect(doubt?.code).toBe("family-too-soon");
    expect(doubt?.is).toContain("South bed had garlic this year");
    const elsewhere = "  North bed:\n    is: 12 x 4 ft\n    crops:\n";
    expect(familyDoubts([year(2027, two(again, elsewhere))])).toEqual([]);
  });
});
