import { gunzipSync } from "node:zlib";
import { expect, test } from "vitest";
import {
  endsWhole,
  gzipped,
  pack,
  parseStoredJson,
  unpack,
} from "../../../src/host/store/bytes.ts";

const TEXT = "SUMMARY:Thin the rocket, bäch bed 🥕\r\n".repeat(200);

test("a text comes back as it went in, and much smaller in between", () => {
  expect(unpack(pack(TEXT))).toBe(TEXT);
  expect(pack(TEXT).length).toBeLessThan(TEXT.length / 10);
});

test("what is packed is the gzip a client is sent", () => {
  expect(gunzipSync(gzipped(pack(TEXT))).toString()).toBe(TEXT);
});

test("nothing packed is still something stored", () => {
  expect(unpack(pack(""))).toBe("");
  expect(pack("")).not.toBe("");
});

test("what was never packed is no text", () => {
  expect(() => unpack("bm90IGd6aXA=")).toThrow();
});

test("a packing is whole by its last letters alone, and cut anywhere it is not", () => {
  for (const text of [TEXT, `${TEXT}a`, `${TEXT}ab`]) {
    const packed = pack(text);
    const size = Buffer.byteLength(text);
    expect(endsWhole(packed, size)).toBe(true);
    expect(endsWhole(packed.slice(-12), size)).toBe(true);
    expect(endsWhole(packed, size + 1)).toBe(false);
    for (let length = 0; length < packed.replace(/=+$/, "").length; length += 1)
      expect(endsWhole(packed.slice(0, length), size), `cut to ${length}`).toBe(false);
  }
});

test("what was kept as JSON is read, and nothing of it once it was cut short", () => {
  const json = JSON.stringify({ day: [1, 2] });
  expect(parseStoredJson(json)).toEqual({ day: [1, 2] });
  for (let length = 0; length < json.length; length += 1)
    expect(parseStoredJson(json.slice(0, length))).toBeNull();
  expect(parseStoredJson(null)).toBeNull();
});
