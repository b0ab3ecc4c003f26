import { describe, expect, it } from "vitest";
import { least, planOf, read } from "./canonical.ts";

const measuresOf = (line: string) => planOf(`${line}\n${least("")}`).measures;
const without = (clock: string, crops = "") =>
  planOf(least(crops).replace("America/Denver", clock));

describe("measures", () => {
  it("are read as a household says them", () => {
    for (const words of ["inches and °F", "inches", "US", "imperial", "feet"])
      expect(measuresOf(`measures: ${words}`)).toBe("us");
    for (const words of ["metric", "cm and °C", "Metric"])
      expect(measuresOf(`measures: ${words}`)).toBe("metric");
  });

  it("are those of the plan's own units where it does not say, and are listed", () => {
    const crops = "beds:\n  A:\n    is: 3 x 1 m";
    expect(without("America/Denver", crops).measures).toBe("metric");
    expect(without("Europe/Paris", crops.replace(" m", " ft")).measures).toBe("us");
    expect(without("Europe/Paris", crops).filled).toContainEqual({
      what: "measures",
      value: "metric",
      why: "the plan's own units",
    });
  });

  it("are those of the time zone where the plan has no units", () => {
    expect(without("America/Denver").measures).toBe("us");
    expect(without("America/Toronto").measures).toBe("metric");
    expect(without("Europe/Paris").measures).toBe("metric");
  });

  it("are refused in cubits", () => {
    expect(read(`measures: cubits\n${least("")}`).problems[0]?.shouldBe).toBe(
      "Write inches and °F, or metric",
    );
  });
});
