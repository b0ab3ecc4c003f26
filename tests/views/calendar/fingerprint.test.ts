import fc from "fast-check";
import { expect, test } from "vitest";
import { fingerprintOf } from "../../../src/views/calendar/fingerprint.ts";

test("where one text ends and the next begins counts, and so does how many there are", () => {
  const lists = [[], [""], ["", ""], ["ab"], ["a", "b"], ["ab", ""], ["", "ab"], ["a\u0000b"]];
  expect(new Set(lists.map(fingerprintOf)).size).toBe(lists.length);
});

test("equal texts have equal prints", () => {
  expect(fingerprintOf(["Thin", "beets"])).toBe(fingerprintOf(["Thin", "beets"]));
  expect(fingerprintOf([""])).toMatch(/^[0-9a-z]+$/);
});

test("a print is short, whatever the text", () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: "binary", maxLength: 2000 })), (texts) => {
      expect(fingerprintOf(texts)).toMatch(/^[0-9a-z]{8,14}$/);
    }),
  );
});

test("a hundred thousand texts that differ little have a hundred thousand prints", () => {
  const prints = new Set<string>();
  for (let n = 0; n < 100_000; n++)
    prints.add(fingerprintOf([`Thin beets to ${n} in`, `before ${n % 7} May`]));
  expect(prints.size).toBe(100_000);
});

test("a change of one letter anywhere in a long text changes the print", () => {
  const text = "Thin to one every 3 in, pulling the weakest. ".repeat(10);
  const prints = Array.from(text, (_, at) =>
    fingerprintOf([`${text.slice(0, at)}#${text.slice(at + 1)}`]),
  );
  expect(new Set([...prints, fingerprintOf([text])]).size).toBe(text.length + 1);
});
