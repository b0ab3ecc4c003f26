import { gunzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { gzipped, pack, unpack } from "../../src/store/bytes.ts";

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
