import { describe, expect, it } from "vitest";
import { slug } from "../../../src/base/text/slug.ts";

describe("the slug of a name", () => {
  it("keeps letters and digits of any script, lower case, with hyphens between", () => {
    expect(slug("Second Garlic")).toBe("second-garlic");
    expect(slug("  Ail d'Été no. 2! ")).toBe("ail-d-été-no-2");
    expect(slug("赤い トマト")).toBe("赤い-トマト");
    expect(slug("Ⅳ ﬁg")).toBe("iv-fig");
  });

  it("is one for one name however it is composed, and its own slug again", () => {
    expect(slug("Été")).toBe(slug("Été"));
    for (const name of ["Second Garlic", "Été", "赤い トマト"])
      expect(slug(slug(name))).toBe(slug(name));
  });

  it("is empty for a name without a letter or digit", () => {
    expect(slug(" -!… ")).toBe("");
  });
});
