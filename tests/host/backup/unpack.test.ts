import { strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { BadArchive, unpack } from "../../../src/host/backup/unpack.ts";

const all = () => true;
const TEXT = "garden: Weir\n".repeat(400);
const GOOD = zipSync({ "a.txt": strToU8(TEXT), "b.txt": [strToU8("stored"), { level: 0 }] });

/** Why an archive is refused. */
function whyNot(bytes: Uint8Array, isWanted: (name: string) => boolean = all): string {
  try {
    unpack(bytes, isWanted);
  } catch (error) {
    if (error instanceof BadArchive) return error.message;
    throw error;
  }
  return "it was unpacked";
}

test("wanted files come out, packed or stored, and others are passed over", () => {
  const files = unpack(GOOD, (name) => name !== "b.txt");
  expect([...files.keys()]).toEqual(["a.txt"]);
  expect(new TextDecoder().decode(unpack(GOOD, all).get("b.txt"))).toBe("stored");
  expect(new TextDecoder().decode(files.get("a.txt"))).toBe(TEXT);
});

describe("an archive is refused", () => {
  test("that is none", () => {
    for (const text of ["", "PK", "nothing", "<html>"])
      expect(whyNot(strToU8(text))).toBe("it is no zip archive");
  });

  test("that is cut anywhere inside a file", () => {
    const words = Array.from({ length: 300 }, (_, i) => `${(i * 7919) % 1009} `).join("");
    const alone = zipSync({ "a.txt": strToU8(words) });
    for (const to of [36, 60, 400])
      expect(whyNot(alone.subarray(0, to))).toMatch(/^it (?:ends in the middle|is cut short)/);
  });

  test("that unpacks to far more than it is, before that is held in memory", () => {
    const zeros = new Uint8Array(60 * 1024 * 1024);
    const bomb = zipSync({ "a.txt": zeros });
    expect(bomb.length).toBeLessThan(300_000);
    expect(whyNot(bomb)).toBe("it unpacks to more than 44 MiB");
    expect(
      whyNot(bomb, () => false),
      "what is not wanted is not unpacked",
    ).toBe("it was unpacked");
  });

  test("that says to be small and is not", () => {
    const bomb = zipSync({ "a.txt": new Uint8Array(60 * 1024 * 1024) });
    new DataView(bomb.buffer).setUint32(22, 10, true);
    expect(whyNot(bomb)).toBe("it unpacks to more than 44 MiB");
  });

  test("that has tens of thousands of files, or one twice", () => {
    const many = Object.fromEntries(
      Array.from({ length: 30_001 }, (_, i) => [`${i}`, new Uint8Array(0)]),
    );
    expect(whyNot(zipSync(many), () => false)).toBe("it has more than 30000 files");
    const one = zipSync({ "a.txt": strToU8("x") });
    expect(whyNot(Uint8Array.from([...one, ...one]))).toBe("a.txt is in it twice");
  });

  test("whose bytes were changed, as something else than what it was, and never with another error", () => {
    for (let at = 0; at < GOOD.length; at += 1) {
      const changed = Uint8Array.from(GOOD);
      changed[at] = (changed[at] ?? 0) ^ 0xff;
      expect(typeof whyNot(changed)).toBe("string");
    }
  });
});
