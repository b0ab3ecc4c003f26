import fc from "fast-check";
import { expect, test } from "vitest";
import {
  bytesSum,
  readable,
  rowSum,
  seal,
  storedInstant,
  unseal,
} from "../../../src/host/store/sealed.ts";

test("a sealed value comes back, and whatever is changed or cut in it is found", () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.nat(), fc.nat(255), (value, at, code) => {
      const sealed = seal(value);
      expect(JSON.stringify(unseal(sealed))).toBe(JSON.stringify(value));
      const place = at % sealed.length;
      const other = `${sealed.slice(0, place)}${String.fromCharCode(code)}${sealed.slice(place + 1)}`;
      if (other !== sealed)
        expect(JSON.stringify(unseal(other) ?? value)).toBe(JSON.stringify(value));
      const cut = unseal(sealed.slice(0, place));
      // A number that is cut is still one; what we store are objects and lists.
      if (typeof value === "object" && value !== null)
        expect(JSON.stringify(cut ?? value)).toBe(JSON.stringify(value));
    }),
  );
});

test("what was stored before there were seals counts as it is, and nothing stored is nothing", () => {
  expect(unseal('{"a":1}')).toEqual({ a: 1 });
  expect([unseal('{"a":'), unseal(null), unseal("")]).toEqual([null, null, null]);
  expect(() => readable("{")).toThrow("can't be read");
  expect(readable(seal([1]))).toEqual([1]);
});

test("a row's sum hangs on each value and its place; an instant of no calendar is the first", () => {
  expect(rowSum(["a", 1, null])).toBe(rowSum(["a", 1, null]));
  expect(
    new Set([rowSum(["a", "b"]), rowSum(["b", "a"]), rowSum(["ab", ""]), rowSum(["a", null])]).size,
  ).toBe(4);
  expect(bytesSum(new Uint8Array([97, 98, 99]))).toBe(0x352441c2);
  expect([5, -1, 9e15, Number.NaN].map(storedInstant)).toEqual([5, 0, 0, 0]);
});
