import { describe, expect, it } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import type { FrostDates } from "../../../src/garden/model/plan.ts";
import { FROST_SPREAD_DAYS } from "../../../src/garden/plan/frosts.ts";
import { least, planOf, told } from "./canonical.ts";

const frosts = (place: string) => {
  const { lastFrost, firstFrost } = planOf(least("", place)).site;
  return [lastFrost, firstFrost].map((dates) => dates && iso(dates));
};
const iso = ({ early, usual, late }: FrostDates) => [early, usual, late].map(isoOf).join(" ");

describe("frost dates", () => {
  it("spreads one date fifteen days either way and lists what it filled in", () => {
    expect(FROST_SPREAD_DAYS).toBe(15);
    expect(frosts("last frost: about 6 May\n  first frost: 2 Oct")).toEqual([
      "2027-04-21 2027-05-06 2027-05-21",
      "2027-09-17 2027-10-02 2027-10-17",
    ]);
    const { filled, site } = planOf(least(""));
    expect(filled.map(({ what }) => what)).toEqual(
      expect.arrayContaining(["last frost", "first frost"]),
    );
    expect(site.lastFrost?.given).toBe(1);
  });

  it("takes three dates as early, usual and late", () => {
    const place = "last frost: 20 Apr, 6 May, 21 May\n  first frost: Sep 20, Oct 2, Oct 15";
    expect(frosts(place)).toEqual([
      "2027-04-20 2027-05-06 2027-05-21",
      "2027-09-20 2027-10-02 2027-10-15",
    ]);
    expect(planOf(least("", place)).site.firstFrost?.given).toBe(3);
  });

  it("lets three dates run over the turn of the year", () => {
    const place = "last frost: 20 Dec, 5 Jan, 20 Jan\n  first frost: 1 Dec, 10 Dec, 15 Dec";
    expect(frosts(place)[0]).toBe("2026-12-20 2027-01-05 2027-01-20");
    const december = "last frost: 1 Dec, 20 Dec, 10 Jan\n  first frost: 5 Dec, 2 Jan, 20 Jan";
    expect(frosts(`latitude: 34\n  ${december}`)).toEqual([
      "2026-12-01 2026-12-20 2027-01-10",
      "2027-12-05 2028-01-02 2028-01-20",
    ]);
    const june = "last frost: 10 Jun, 28 Jun, 20 Jul\n  first frost: 1 Jun, 14 Jun, 30 Jun";
    expect(frosts(`latitude: -34\n  ${june}`)).toEqual([
      "2027-06-10 2027-06-28 2027-07-20",
      "2028-06-01 2028-06-14 2028-06-30",
    ]);
  });

  it("puts a southern garden's first frost in the year after its last one", () => {
    expect(frosts("latitude: -42.9\n  last frost: 5 Oct\n  first frost: 10 May")).toEqual([
      "2027-09-20 2027-10-05 2027-10-20",
      "2028-04-25 2028-05-10 2028-05-25",
    ]);
  });

  it("is null for a place without frost", () => {
    expect(frosts("last frost: none\n  first frost: none")).toEqual([null, null]);
  });

  it("refuses frost dates of the other half of the world and a first frost in spring", () => {
    const south = "last frost: 5 Oct\n  first frost: 10 May";
    expect(told(least("", `latitude: 42.9\n  ${south}`))).toEqual(["frosts-crossed@7:16"]);
    expect(told(least("", "last frost: 6 May\n  first frost: 2 Apr"))).toEqual([
      "frosts-crossed@6:16",
    ]);
    expect(told(least("", south))).toEqual([]);
    expect(told(least("", `latitude: 4\n  ${south}`))).toEqual([]);
  });

  it("reports a wrong date at its own column and no more", () => {
    expect(told(least("", "last frost: 20 Apr, 05-06, 21 May\n  first frost: 2 Oct"))).toEqual([
      "two-readings@5:23",
    ]);
  });
});

describe("frost dates and a record of stations", () => {
  it("would accept the dates of stations from Houston to Duluth", () => {
    for (const [last, first] of [
      ["3 Feb", "20 Dec"],
      ["17 May", "27 Sep"],
      ["9 Feb", "3 Dec"],
      ["5 Jun", "28 Sep"],
      ["8 Mar", "21 Nov"],
    ])
      expect(
        told(least("", `latitude: 40\n  last frost: ${last}\n  first frost: ${first}`)),
      ).toEqual([]);
  });
});

describe("frost dates beside a weather file's own", () => {
  const means =
    "low: [-9, -8, -5, -2, 3, 7, 9, 8, 4, 0, -5, -8], high: [-1, 2, 7, 13, 18, 23, 28, 27, 22, 14, 5, 0], in: °C";
  const beside = (last: string, nights: string) =>
    least("", `last frost: ${last}\n  first frost: 2 Oct\n  weather: { ${means}, ${nights} }`);

  it("are doubted where they are more than thirty days from them", () => {
    const own = "last frost: 5 Apr, first frost: 28 Sep";
    expect(told(beside("5 May", own))).toEqual([]);
    expect(told(beside("6 May", own))).toEqual(["frost-unlike-weather@5:15"]);
    expect(told(beside("6 May", "last frost: none, first frost: none"))).toEqual([
      "frost-unlike-weather@5:15",
      "frost-unlike-weather@6:16",
    ]);
  });

  it("have no killing frost before the first frost", () => {
    const nights =
      "last frost: 5 May, first frost: 28 Sep, first night at 28 °F: [20 Sep, 30 Sep, 20 Oct]";
    const { firstFrost, killingFrost } = planOf(beside("6 May", nights)).site;
    expect(firstFrost && iso(firstFrost)).toBe("2027-09-17 2027-10-02 2027-10-17");
    expect(killingFrost && iso(killingFrost)).toBe("2027-09-20 2027-10-02 2027-10-20");
  });

  it("leave the killing frost open where the file has none", () => {
    expect(planOf(beside("6 May", "last frost: 5 May")).site.killingFrost).toBeNull();
    expect(planOf(least("")).site.killingFrost).toBeNull();
  });
});
