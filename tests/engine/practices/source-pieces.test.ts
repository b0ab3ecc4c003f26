import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { celsius, degreesC } from "../../../src/base/quantities/quantity.ts";
import { sourcePieces } from "../../../src/engine/practices/source-pieces.ts";

describe("where a figure is from", () => {
  test("has its temperatures as quantities, and is else as it was written", () => {
    expect(
      sourcePieces({ kind: "house rule", why: "half come up at 46 °F, most at 50 °F" }),
    ).toEqual([
      "house rule: half come up at ",
      { quantity: degreesC(celsius(46)) },
      ", most at ",
      { quantity: degreesC(celsius(50)) },
    ]);
    expect(sourcePieces({ kind: "common practice" })).toEqual(["common practice"]);
  });

  test("says °F behind each number of a temperature in the crops' files, so that none is left in other degrees", () => {
    const folder = new URL("../../../src/crops/", import.meta.url);
    const loose = readdirSync(folder).flatMap((file) =>
      readFileSync(new URL(file, folder), "utf8")
        .split("\n")
        .filter((line) => !/^\s*(?:\*|\/)/.test(line))
        .filter((line) => /\d °F/.test(line))
        .filter((line) => / (?:at|of|about|the) [3-9]\d\b/.test(line.replace(/\d+ °F/g, "")))
        .map((line) => `${file}: ${line.trim()}`),
    );
    expect(loose).toEqual([]);
  });
});
