import { describe, expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";

function readWith(lines: string) {
  const text = `garden: Lane
year: 2027
measures: metric
place:
  clock: America/Denver
${lines}
  last frost: about 6 May
  first frost: about 2 Oct
`;
  const { plan, problems } = readPlan(text, { garden: "lane", file: "2027.yaml" }, PRACTICES);
  return { site: plan?.site, problems: problems.filter(({ weight }) => weight === "problem") };
}

const PLACE = "  latitude: 46.6\n  longitude: -111.5\n";

describe("who is asked for the weather", () => {
  test("is nobody unless the plan says so, wherever it lies", () => {
    expect(readWith(PLACE).site).toMatchObject({ longitude: -111.5, forecast: null });
  });

  test.each([
    ["Open-Meteo", "Open-Meteo"],
    ["from MET Norway", "MET Norway"],
    ["open-meteo", "Open-Meteo"],
  ])("is read from %s", (said, forecast) => {
    expect(readWith(`${PLACE}  forecast: ${said}`).site).toMatchObject({ forecast });
  });

  test("that is not known is a problem with the names that are", () => {
    const [problem] = readWith(`${PLACE}  forecast: the radio`).problems;
    expect(problem).toMatchObject({ code: "unknown-word", at: { line: 8 } });
    expect(problem?.shouldBe).toContain("Open-Meteo or MET Norway");
  });

  test("is asked about a place, which needs both coordinates", () => {
    const [problem] = readWith("  latitude: 46.6\n  forecast: Open-Meteo").problems;
    expect(problem).toMatchObject({ code: "forecast-nowhere", at: { line: 7 } });
  });

  test("a longitude no place has is a problem", () => {
    expect(readWith("  longitude: 200").problems[0]?.code).toBe("out-of-range");
  });
});
