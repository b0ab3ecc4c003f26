import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { horizonAt } from "../../src/app/build.ts";
import { drawnFor } from "../depth.ts";
import { gardenOf, QUARRY } from "../gardens.ts";
import { inOtherZones } from "../zones.ts";
import { bytesOf, dawn } from "./feeds.ts";

const AWAY = "away:\n  - Oda, 19 to 23 Jun\n  - everybody, 1 to 7 Aug\n";
const DIARY = "diary:\n  - 2 May: carrots sown by Oda\n  - 24 May: carrots up\n";
const LIVED = `${QUARRY.replace("beds:\n", `${AWAY}beds:\n`)}${DIARY}`;
const ASKED = `${LIVED}assume: open\n`;
const print = (text: string) => createHash("sha256").update(text).digest("hex");
const until = (text: string, instant: number) => horizonAt(gardenOf(text), instant).until;

describe("within a horizon", () => {
  test("the bytes are the same at every instant", () => {
    const roll = drawnFor(7);
    for (const text of [QUARRY, LIVED, ASKED]) {
      const from = dawn("2027-05-27") + Math.floor(roll() * 86_400_000);
      const bytes = bytesOf(text, from);
      const end = until(text, from);
      const instants = [0.1, 0.4, 0.9].map(() => Math.floor(from + roll() * (end - from)));
      for (const instant of [...instants, end - 1]) expect(bytesOf(text, instant)).toBe(bytes);
    }
  });

  test("the bytes are the same in every time zone that the process may stand in", () => {
    const here = print(bytesOf(LIVED, dawn("2027-05-27")));
    const there = inOtherZones({
      ...{ folder: import.meta.dirname, env: { LIVED } },
      ...{ imports: 'import { LIVED, print } from "./zone.ts";', gives: "print(LIVED)" },
    });
    for (const [zone, bytes] of there) expect(bytes, zone).toBe(here);
  });
});

describe("once the horizon has passed", () => {
  test("the bytes are the same where nothing told has changed", () => {
    const now = dawn("2027-05-27");
    expect(bytesOf(LIVED, until(LIVED, now))).toBe(bytesOf(LIVED, now));
  });

  test("they are others where work is still open", () => {
    const now = dawn("2027-06-10");
    expect(bytesOf(ASKED, until(ASKED, now))).not.toBe(bytesOf(ASKED, now));
  });

  test("they are others where a month's work leaves the feed", () => {
    const alone = QUARRY.replace(/people:[\s\S]*?beds:/, "beds:");
    const now = dawn("2027-11-20");
    const later = dawn("2028-02-10");
    expect(until(alone, now)).toBe(dawn("2027-12-01"));
    expect(bytesOf(alone, until(alone, now))).toBe(bytesOf(alone, now));
    expect(bytesOf(alone, until(alone, later))).not.toBe(bytesOf(alone, later));
  });
});
