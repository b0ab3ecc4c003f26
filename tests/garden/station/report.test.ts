import { describe, expect, test } from "vitest";
import { reportOn } from "../../../src/garden/station/report.ts";
import { figuresOf } from "../../../src/garden/station/weather-file.ts";
import { dailySummaries, plainFile, stationOf } from "./files.ts";

const report = (text: string, given: number | null = null) => {
  const station = stationOf(text);
  return reportOn(station, figuresOf(station, given), given);
};

describe("the report on a station's figures", () => {
  test("begins with the columns, the unit and how it is known", () => {
    expect(report(plainFile())[0]).toBe(
      "Read low as the low, high as the high, rain as the rain, in °C and mm (guessed from the highs; say otherwise with --in).",
    );
    expect(report(plainFile().replace("high,", "high (°C),"))[0]).toMatch(/\(as the column says\)/);
  });

  test("reports days, gaps and months left out", () => {
    expect(report(plainFile())[1]).toBe("1 Jan 2020 to 31 Dec 2021: none missing.");
    const gaps = report(plainFile().replaceAll(/^2020-03-.*\n/gm, ""));
    expect(gaps[1]).toBe(
      "1 Jan 2020 to 31 Dec 2021: 31 days without a low or a high, the longest run is 31 days from 1 Mar 2020.",
    );
    const cut = report(plainFile().replaceAll(/^2020-03-[12].*\n/gm, ""));
    expect(cut).toContain("1 month left out of the means, under four days in five there.");
  });

  test("gives the hemisphere and why", () => {
    const half = (text: string, given?: number) =>
      report(text, given).find((line) => /equator/.test(line));
    expect(half(plainFile())).toMatch(/north of the equator \(July is the warmer/);
    expect(half(plainFile(), -33)).toMatch(/south of the equator \(as you said\)/);
    expect(half(dailySummaries())).toMatch(/north .*by the file's latitude/);
  });

  test("reports the years behind the frost dates, left out and without", () => {
    const lines = report(plainFile());
    expect(lines).toContain("Last frost: 2 years, each had one.");
    expect(lines).toContain("Ten years or more make surer dates.");
    expect(lines.some((line) => line.startsWith("Spread is left out"))).toBe(true);
    const warm = report(plainFile((celsius) => celsius + 20));
    expect(warm).toContain(
      "First frost: 1 year, none had one; 1 winter runs past the record's end.",
    );
    expect(warm).toContain("Last frost: 1 year, none had one; 1 winter begins before the record.");
    const holes = report(plainFile().replaceAll(/^202.-0[4567]-[0-2][123456789],.*\n/gm, ""));
    expect(holes.find((line) => line.startsWith("Last frost"))).toBe(
      "Last frost: no year counts; 2 years left out with 10 or more nights missing. Its dates are left out of the file.",
    );
  });
});
