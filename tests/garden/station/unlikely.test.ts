import { describe, expect, test } from "vitest";
import { frozenThrough, unlikelyIn } from "../../../src/garden/station/unlikely.ts";
import { figuresOf } from "../../../src/garden/station/weather-file.ts";
import { plainFile, stationOf } from "./files.ts";

type Given = { readonly latitude?: number; readonly unit?: "°C" | "°F" };

/** Highs up to 27 °C and lows up to 16 °C. */
const WARM = plainFile((celsius) => celsius + 10);
const odd = (text: string, { latitude, unit }: Given = {}) => {
  const station = stationOf(text, unit ? { unit } : {});
  return unlikelyIn(station, figuresOf(station, latitude ?? null));
};
const frozen = (text: string, unit: "°C" | "°F") =>
  frozenThrough(stationOf(text, { unit }), "s.csv");

describe("what can hardly be in a station's figures", () => {
  test("is nothing where the unit and the latitude are right", () => {
    expect(odd(WARM)).toEqual([]);
    expect(odd(WARM, { latitude: 46.6 })).toEqual([]);
  });

  test("is a summer without warmth, reported in the unit it was read in", () => {
    expect(odd(WARM, { unit: "°F" })).toEqual([
      "The warmest month's mean high is 27 °F, which is no summer.",
      "The unit looks wrong: the file was read in °F; say another with --in.",
    ]);
    expect(odd(plainFile((celsius) => celsius - 13))[0]).toContain("is 4 °C");
    expect(odd(plainFile((celsius) => celsius - 12))).toEqual([]);
  });

  test("is more rain in a month than any but the wettest places have", () => {
    const wet = (daily: number) => WARM.replaceAll(/,1$/gm, `,${daily}`);
    expect(odd(wet(33))[0]).toBe(
      "January has 1023 mm of rain, which hardly any place on earth has.",
    );
    expect(odd(wet(32))).toEqual([]);
    expect(odd(wet(4), { unit: "°F" })).toContain(
      "January has 124 in of rain, which hardly any place on earth has.",
    );
  });

  test("is a latitude of the other half of the world, either way", () => {
    expect(odd(WARM, { latitude: -33 })).toEqual([
      "Latitude -33 lies south of the equator, but July is much the warmer month: check which of the two is wrong.",
    ]);
    const south = plainFile((celsius) => 10 - celsius);
    expect(odd(south.replace("low,high", "high,low"), { latitude: 33 })).toEqual([
      "Latitude 33 lies north of the equator, but January is much the warmer month: check which of the two is wrong.",
    ]);
  });
});

describe("frost through midsummer", () => {
  test("in every year is a problem, and says that the unit looks wrong", () => {
    expect(frozen(WARM, "°F")).toMatchObject({
      code: "frost-at-midsummer",
      at: { file: "s.csv", line: 1, column: 1 },
      is: "Every year's last and first frost lie at midsummer, read in °F",
    });
    expect(frozen(WARM, "°C")).toBeNull();
  });

  test("is looked for at January's in a southern record", () => {
    const south = plainFile((celsius) => 10 - celsius).replace("low,high", "high,low");
    expect(frozen(south, "°F")).not.toBeNull();
    expect(frozen(south, "°C")).toBeNull();
  });

  test("is none where one year has no frost near midsummer, or no year has any", () => {
    const thawed = WARM.replaceAll(/^(2021-0[678]-..),(\d+),/gm, "$1,40,").replaceAll(
      /^(2021-0[678]-..,40),\d+,/gm,
      "$1,60,",
    );
    expect(frozen(thawed, "°F")).toBeNull();
    expect(
      frozen(
        plainFile((celsius) => celsius + 20),
        "°C",
      ),
    ).toBeNull();
  });
});
