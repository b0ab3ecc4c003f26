import { describe, expect, it } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import {
  clockChanges,
  dayAt,
  instantOf,
  isFirstShowing,
  isoWithOffset,
  isZone,
  minuteAt,
  sayMinute,
  startOf,
  wallTimeAt,
  zoneNames,
} from "../../../src/base/days/instants.ts";

const isoUtc = (instant: number) => `${new Date(instant).toISOString().slice(0, 19)}Z`;
const DENVER = "America/Denver";

describe("instants of a garden's clock", () => {
  it("are those of its zone, summer and winter", () => {
    expect(isoUtc(instantOf(dayOrThrow(2027, 5, 8), 600, DENVER))).toBe("2027-05-08T16:00:00Z");
    expect(isoUtc(instantOf(dayOrThrow(2027, 1, 8), 600, DENVER))).toBe("2027-01-08T17:00:00Z");
    expect(isoUtc(instantOf(dayOrThrow(2027, 1, 8), 600, "Australia/Hobart"))).toBe(
      "2027-01-07T23:00:00Z",
    );
  });

  it("read a skipped hour with the offset before, and a repeated one the first time", () => {
    expect(isoUtc(instantOf(dayOrThrow(2027, 3, 14), 150, DENVER))).toBe("2027-03-14T09:30:00Z");
    expect(isoUtc(instantOf(dayOrThrow(2027, 11, 7), 90, DENVER))).toBe("2027-11-07T07:30:00Z");
    expect(isoUtc(instantOf(dayOrThrow(2027, 11, 7), 180, DENVER))).toBe("2027-11-07T10:00:00Z");
  });

  it("are on the day the clock shows, at every hour of the year", () => {
    for (const zone of [DENVER, "Pacific/Kiritimati", "Pacific/Niue", "Europe/London"])
      for (let n = 0; n < 366; n += 5) {
        const day = dayOrThrow(2027, 1, 1) + n;
        for (const minute of [0, 720, 1439])
          expect(dayAt(instantOf(day as never, minute, zone), zone)).toBe(day);
      }
  });

  it("begin a day at its midnight", () => {
    expect(startOf(dayOrThrow(2027, 5, 8), DENVER)).toBe(
      instantOf(dayOrThrow(2027, 5, 8), 0, DENVER),
    );
  });

  it("are written with their offset", () => {
    expect(isoWithOffset(dayOrThrow(2027, 5, 8), 600, DENVER)).toBe("2027-05-08T10:00:00-06:00");
    expect(isoWithOffset(dayOrThrow(2027, 5, 8), 600, "Asia/Kathmandu")).toBe(
      "2027-05-08T10:00:00+05:45",
    );
  });

  it("have their minute on its clock, also across a clock change and before 1970", () => {
    expect(minuteAt(Date.UTC(2027, 2, 14, 8, 59, 59), DENVER)).toBe(119);
    expect(minuteAt(Date.UTC(2027, 2, 14, 9), DENVER)).toBe(180);
    expect(minuteAt(Date.UTC(2027, 4, 8, 18, 15), "Asia/Kathmandu")).toBe(0);
    expect(minuteAt(Date.UTC(1969, 11, 31, 23, 30), "UTC")).toBe(1410);
  });

  it("show a wall time, also on the day of a clock change", () => {
    expect(isoUtc(wallTimeAt(Date.UTC(2027, 4, 8, 16), DENVER))).toBe("2027-05-08T10:00:00Z");
    expect(isoUtc(wallTimeAt(Date.UTC(2027, 2, 14, 8, 59), DENVER))).toBe("2027-03-14T01:59:00Z");
    expect(isoUtc(wallTimeAt(Date.UTC(2027, 2, 14, 9), DENVER))).toBe("2027-03-14T03:00:00Z");
  });

  it("show an hour twice when the clock goes back, and the first is told from the second", () => {
    const second = Date.UTC(2027, 10, 7, 8, 30);
    expect(wallTimeAt(second, DENVER)).toBe(wallTimeAt(second - 3_600_000, DENVER));
    expect([second - 3_600_000, second].map((at) => isFirstShowing(at, DENVER))).toEqual([
      true,
      false,
    ]);
    expect(isFirstShowing(Date.UTC(2027, 4, 8), DENVER)).toBe(true);
  });

  it("know every change of a clock to the minute, and none where there is none", () => {
    const year = [Date.UTC(2027, 0, 1), Date.UTC(2028, 0, 1)] as const;
    const changes = (zone: string) =>
      clockChanges(...year, zone).map(({ at, before, after }) => [
        isoUtc(at),
        (after - before) / 60_000,
      ]);
    expect(changes(DENVER)).toEqual([
      ["2027-03-14T09:00:00Z", 60],
      ["2027-11-07T08:00:00Z", -60],
    ]);
    expect(changes("Australia/Lord_Howe").map(([, minutes]) => minutes)).toEqual([-30, 30]);
    expect(changes("Asia/Kolkata")).toEqual([]);
  });

  it("say a minute on a clock of 24 hours", () => {
    expect([sayMinute(0), sayMinute(1110), sayMinute(1440)]).toEqual(["00:00", "18:30", "00:00"]);
  });

  it("know zones by name and throw for none", () => {
    for (const zone of [DENVER, "Europe/Paris", "UTC"]) expect(isZone(zone)).toBe(true);
    for (const zone of ["America/Denvr", "", "+05:00", "America/Denver!", "a/../b"])
      expect(isZone(zone)).toBe(false);
    expect(zoneNames()).toContain(DENVER);
    expect(() => instantOf(dayOrThrow(2027, 5, 8), 0, "Nowhere/Land")).toThrow(RangeError);
  });

  it("are right however many zones are asked for, and asked for again", () => {
    const day = dayOrThrow(2027, 5, 8);
    const noons = () => zoneNames().map((zone) => instantOf(day, 720, zone));
    expect(noons()).toEqual(noons());
    expect(isoUtc(instantOf(day, 600, DENVER))).toBe("2027-05-08T16:00:00Z");
  });
});
