import { describe, expect, test } from "vitest";
import { FAULTY } from "./strict/faulty.ts";
import { VALID } from "./strict/valid.ts";
import { faultsOf, readStrictly } from "./strict.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe("the strict reader", () => {
  test("takes a feed without a fault", () => {
    expect(faultsOf(bytesOf(VALID))).toEqual([]);
  });

  test("reads what the feed says", () => {
    const { events, head } = readStrictly(bytesOf(VALID));
    expect(head["X-PUBLISHED-TTL"]).toBe("PT4H");
    expect(events).toHaveLength(2);
    expect(events[0]).toEqual({
      uid: "0b7f3c1a-5d2e-8a41-9c3b-1f2e3d4c5b6a",
      sequence: 2,
      stamp: Date.UTC(2027, 4, 1, 6),
      start: { kind: "date", day: Date.UTC(2027, 4, 8) / 86_400_000 },
      end: { kind: "date", day: Date.UTC(2027, 4, 9) / 86_400_000 },
      summary: "Thin beets, Root bed",
      description:
        "Thin to one every 3 in; pull the weakest. Rote R\u00fcben heissen so.\n\nhttps://example.org/a,b/1",
      zone: null,
      link: "https://example.org/a,b/1",
      categories: ["thin", "weed"],
      busy: false,
      alarm: 6 * 3600,
    });
    expect(events[1]?.alarm).toBeNull();
    expect(events[1]).toMatchObject({
      zone: "America/Denver",
      start: { kind: "instant", at: Date.UTC(2027, 4, 10, 16) },
    });
  });

  test("throws with every fault's line and name", () => {
    const broken = VALID.replace("VERSION:2.0\r\n", "").replace("SEQUENCE:2", "SEQUENCE:x");
    expect(() => readStrictly(bytesOf(broken))).toThrow(
      /version-missing[\s\S]*sequence-not-a-number/,
    );
  });

  test.for(FAULTY)("refuses by the name $code: $how", ({ code, bytes }) => {
    const codes = faultsOf(bytes).map((fault) => fault.code);
    expect([...new Set(codes)]).toEqual([code]);
  });

  test("knows at least seventy ways to be wrong", () => {
    expect(new Set(FAULTY.map(({ code }) => code)).size).toBeGreaterThanOrEqual(70);
  });
});
