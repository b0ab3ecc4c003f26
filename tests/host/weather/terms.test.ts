import { describe, expect, test } from "vitest";
import { cellName, roundedPlace, SERVICES } from "../../../src/host/weather/terms.ts";

const PLACE = { latitude: 46.5927, longitude: -112.0361, clock: "America/Denver" };

describe("what leaves for a service", () => {
  test("is a place to the tenth of a degree and no more", () => {
    for (const { urlOf } of Object.values(SERVICES)) {
      const url = urlOf(PLACE);
      expect(url).toContain("46.6");
      expect(url).toContain("-112.0");
      expect(url).not.toMatch(/46\.59|112\.03/);
    }
  });

  test("asks Open-Meteo for a quarter behind and ten days ahead, in its own zone and in metres and °C", () => {
    const { searchParams } = new URL(SERVICES["Open-Meteo"].urlOf(PLACE));
    expect(Object.fromEntries(searchParams)).toEqual({
      latitude: "46.6",
      longitude: "-112.0",
      daily: "temperature_2m_min,temperature_2m_max,precipitation_sum,wind_gusts_10m_max",
      hourly: "relative_humidity_2m",
      timezone: "America/Denver",
      wind_speed_unit: "ms",
      past_days: "92",
      forecast_days: "10",
    });
  });

  test("names who made the data", () => {
    for (const { attribution } of Object.values(SERVICES))
      expect(attribution).toContain("CC BY 4.0");
  });
});

describe("a cell", () => {
  test("is one for all gardens within a tenth of a degree, of a clock and a service", () => {
    const near = { ...PLACE, latitude: 46.61, longitude: -111.98 };
    expect(cellName("Open-Meteo", near)).toBe(cellName("Open-Meteo", PLACE));
    expect(cellName("MET Norway", PLACE)).not.toBe(cellName("Open-Meteo", PLACE));
    expect(cellName("Open-Meteo", { ...PLACE, latitude: 46.7 })).not.toBe(
      cellName("Open-Meteo", PLACE),
    );
  });

  test("at the equator has one name from both sides", () => {
    expect(cellName("Open-Meteo", { ...PLACE, latitude: -0.01 })).toBe(
      cellName("Open-Meteo", { ...PLACE, latitude: 0.01 }),
    );
    expect(roundedPlace({ ...PLACE, latitude: -0.01 }).latitude).toBe(0);
  });
});
