import { describe, expect, it } from "vitest";
import { inEach, note, observed } from "../../../src/garden/diary/clause.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { on } from "../plan/canonical.ts";

const line = { day: on(6, 1), text: "Something", at: { file: "f", line: 1, column: 1 } };
const seenIn =
  (known: readonly string[]) =>
  (name: string): Observation =>
    known.includes(name)
      ? { kind: "seen", day: line.day, planting: name, stage: "up", sowing: null }
      : note(line, `no ${name}`);
const names = (observations: readonly Observation[]) =>
  observations.map((each) =>
    each.kind === "seen" ? each.planting : each.kind === "note" && each.why,
  );

describe("a name", () => {
  it("is one thing first, then each of a list", () => {
    expect(names(inEach("salt and pepper", seenIn(["salt and pepper", "salt"])))).toEqual([
      "salt and pepper",
    ]);
    expect(names(inEach("peas, beets and corn", seenIn(["peas", "beets", "corn"])))).toEqual([
      "peas",
      "beets",
      "corn",
    ]);
  });

  it("gives the reason of what is not there alone", () => {
    expect(names(inEach("peas & corn", seenIn(["peas"])))).toEqual(["no corn"]);
    expect(names(inEach("corn", seenIn(["peas"])))).toEqual(["no corn"]);
  });
});

it("a note keeps the line's own words, and is nothing observed", () => {
  expect(note(line, null)).toEqual({ kind: "note", day: line.day, text: "Something", why: null });
  expect(observed([note(line, null)])).toBe(false);
  expect(observed([])).toBe(true);
});
