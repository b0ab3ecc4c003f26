import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { CROPS } from "../../src/crops/crops.ts";
import { allFigures } from "./walk.ts";

/*
 * How many of each crop's figures are from memory, as DEVELOPERS.md lists it. `GOLDEN=write npx vitest run --config
 * tests/vitest.config.ts tests/crops/memory.test.ts` writes the list anew.
 */
const NOTES = "DEVELOPERS.md";
const LIST =
  /(?<=\*\*From memory\*\*, never more than a third of a crop's figures: )[\s\S]*?\.(?=\n\n)/;

const shares = CROPS.map((crop) => {
  const all = allFigures([crop]);
  const memory = all.filter(({ figure }) => figure.source.kind === "memory").length;
  return { name: crop.one, memory, all: all.length };
});

function listed(): string {
  const some = shares
    .filter(({ memory }) => memory > 0)
    .toSorted((a, b) => b.memory - a.memory || (a.name < b.name ? -1 : 1))
    .map(({ name, memory }) => `${name} ${memory}`);
  return `${some.join(", ")}; none of the other ${shares.length - some.length} crops.`;
}

const oneLine = (text: string) => text.replace(/\s+/g, " ");

test("the notes list every crop's figures from memory, the most first", () => {
  const notes = readFileSync(NOTES, "utf8");
  if (process.env.GOLDEN === "write") writeFileSync(NOTES, notes.replace(LIST, inLines(listed())));
  expect(oneLine(LIST.exec(readFileSync(NOTES, "utf8"))?.[0] ?? "")).toBe(listed());
});

/** Lines of at most 118 letters. */
function inLines(text: string): string {
  return text.replace(/(.{1,116})(?: |$)/g, "$1\n").trimEnd();
}

test("no crop has more than a third of its figures from memory", () => {
  const most = shares.filter(({ memory, all }) => memory * 3 > all).map(({ name }) => name);
  expect(most).toEqual([]);
});
