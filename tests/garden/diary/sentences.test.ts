import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse as parseYaml } from "yaml";
import { type Reading, readWrittenLines, type WrittenLines } from "./written-lines.ts";

/** Lines by the gardens of tests/golden/gardens. */
const SENTENCES: WrittenLines = parseYaml(
  readFileSync(new URL("sentences.yaml", import.meta.url), "utf8"),
);

describe("two hundred lines of five gardens", () => {
  const readings = readWrittenLines(
    SENTENCES,
    (garden) => new URL(`../../golden/gardens/${garden}.yaml`, import.meta.url),
  );
  const those = (wanted: Reading) => readings.filter(({ reading }) => reading === wanted);
  const written = Object.values(SENTENCES).flat().length;

  it("are all read", () => {
    expect(written).toBeGreaterThanOrEqual(200);
    expect(readings).toHaveLength(written);
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
        `${written} lines: ${those("understood").length} understood, ${notes.length} kept as notes, ${those("misunderstood").length} misunderstood`,
        ...notes.map(({ line, said }) => `  ${line.text}${said === "" ? "" : ` => ${said}`}`),
      ].join("\n"),
    );
    expect(those("understood").length / written).toBeGreaterThanOrEqual(0.9);
  });
});
