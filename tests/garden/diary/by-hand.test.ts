import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse as parseYaml } from "yaml";
import { type Reading, readWrittenLines } from "./written-lines.ts";

const FILES = ["lines-first", "lines-second", "lines-third"];
const fileOf = (name: string) => new URL(`by-hand/${name}.yaml`, import.meta.url);

describe("six hundred and sixty lines by another hand", () => {
  const readings = FILES.flatMap((file) =>
    readWrittenLines(parseYaml(readFileSync(fileOf(file), "utf8")), fileOf),
  );
  const those = (wanted: Reading) => readings.filter(({ reading }) => reading === wanted);

  it("are all read", () => {
    expect(readings).toHaveLength(660);
  });

  it("are never misunderstood", () => {
    expect(
      those("misunderstood").map(
        ({ line, means, said }) => `${line.text} => ${said}, and not ${means.join(" | ")}`,
      ),
    ).toEqual([]);
  });

  it("are understood, nine of ten at least", () => {
    const notes = those("kept as a note");
    console.log(
      [
        `${readings.length} lines: ${those("understood").length} understood, ${notes.length} kept as notes, ${those("misunderstood").length} misunderstood`,
        ...notes.map(({ line, means }) => `  ${line.text}: ${means.join(" | ")}`),
      ].join("\n"),
    );
    expect(those("understood").length / readings.length).toBeGreaterThanOrEqual(0.9);
  });
});
