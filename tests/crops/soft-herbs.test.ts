import { describe, expect, it } from "vitest";
import { LOVAGE, SOFT_HERBS, SORREL, TARRAGON } from "../../src/crops/soft-herbs.ts";

describe("herbs that die back in winter", () => {
  it("come again for years, each of its own family", () => {
    expect(SOFT_HERBS).toEqual([SORREL, LOVAGE, TARRAGON]);
    expect(SOFT_HERBS.map(({ family }) => family)).toEqual([
      "knotweed family",
      "carrot family",
      "daisy family",
    ]);
    for (const { key, perennial } of SOFT_HERBS)
      expect(perennial?.standsYears.value[0], key).toBeGreaterThan(1);
  });

  it("have tarragon bought, since the good kind makes no seed", () => {
    expect(TARRAGON.starts).toEqual(["plants"]);
    expect(TARRAGON.indoors).toBeNull();
  });
});
