import { describe, expect, test } from "vitest";
import {
  byteLength,
  endsWhole,
  parseStoredJson,
  unzip,
  zip,
} from "../../../src/host/store/bytes.ts";

const TEXT = "BEGIN:VCALENDAR\r\nSUMMARY:bäch 🥕\r\n".repeat(40);

test("a text is the same after it was zipped, and smaller in between", () => {
  expect(unzip(zip(TEXT))).toBe(TEXT);
  expect(zip(TEXT).length).toBeLessThan(TEXT.length / 5);
  expect(unzip(zip(""))).toBe("");
});

describe("bytes end whole", () => {
  const bytes = zip(TEXT);
  const size = byteLength(TEXT);

  test("as they were zipped, and wherever in a longer buffer they lie", () => {
    expect(endsWhole(bytes, size)).toBe(true);
    const longer = new Uint8Array([1, 2, 3, ...bytes]).subarray(3);
    expect(endsWhole(longer, size)).toBe(true);
  });

  test("never cut short, whatever the length, nor for another size", () => {
    for (let length = 0; length < bytes.length; length += 1)
      expect(endsWhole(bytes.subarray(0, length), size), String(length)).toBe(false);
    expect(endsWhole(bytes, size + 1)).toBe(false);
  });
});

test("what can't be read as JSON counts as never stored", () => {
  expect(parseStoredJson('{"a":1}')).toEqual({ a: 1 });
  expect([parseStoredJson('{"a":'), parseStoredJson(""), parseStoredJson(null)]).toEqual([
    null,
    null,
    null,
  ]);
});

test("a text's length is counted in bytes", () => {
  expect(byteLength("bäch 🥕")).toBe(10);
});
