import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { parse as parseYaml } from "yaml";
import { dayOrThrow } from "../../src/base/days/day.ts";
import { PRACTICES } from "../../src/engine/practices/all.ts";
import { parseDiary } from "../../src/garden/diary/parse.ts";
import { PLAN } from "../garden/plan/canonical.ts";

const LINES: readonly string[] = ["first", "second", "third"].flatMap((name) => {
  const file = new URL(`../garden/diary/by-hand/lines-${name}.yaml`, import.meta.url);
  const lines: Record<string, readonly (readonly [string])[]> = parseYaml(
    readFileSync(file, "utf8"),
  );
  return Object.values(lines).flatMap((each) => each.map(([line]) => line));
});
const WORDS = [...new Set(LINES.flatMap((line) => line.split(/(?<=[ ,.:;!?])/)))];

const at = { file: "f", line: 1, column: 1 };
const read = (text: string) =>
  parseDiary([{ day: dayOrThrow(2027, 6, 10), text, at }], [PLAN], PRACTICES);

test("whatever words are put together, a line is read, and what is not understood is kept as it stands", () => {
  const jumbled = fc
    .array(fc.constantFrom(...WORDS), { maxLength: 40 })
    .map((words) => words.join(""));
  fc.assert(
    fc.property(
      fc.oneof(jumbled, fc.string({ maxLength: 320 }), fc.string({ unit: "grapheme" })),
      (text) => {
        const found = read(text);
        expect(found.length).toBeGreaterThan(0);
        for (const each of found) if (each.kind === "note") expect(each.text).toBe(text);
      },
    ),
  );
});
