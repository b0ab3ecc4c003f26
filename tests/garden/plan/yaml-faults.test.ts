import { describe, expect, it } from "vitest";
import { parseDocument } from "yaml";
import { treeOf } from "../../../src/garden/plan/yaml.ts";
import { explainYamlFaults } from "../../../src/garden/plan/yaml-faults.ts";

const slips = (text: string) =>
  treeOf(text, "f").problems.map(({ code, at }) => `${code}@${at.line}:${at.column}`);

describe("slips of the pen", () => {
  it("are reported at their place, as what they are", () => {
    expect(slips("a:\n\tb: 1")).toEqual(["tab@2:1"]);
    expect(slips("a: 1\n b: 2")).toMatchObject([expect.stringMatching(/@[12]:/)]);
    expect(slips("a: b: c")).toEqual(["colon@1:4"]);
    expect(slips('a: "b\nc: d\ne: f')).toEqual(["unclosed@1:4"]);
    expect(slips("a: 'b\nc: d")).toEqual(["unclosed@1:4"]);
    expect(slips("a: [b, c\nd: e")).toEqual(["unclosed@1:4"]);
    expect(slips("a: {b: c\nd: e")).toEqual(["unclosed@1:4"]);
    expect(slips("a: @b")).toEqual(["unreadable@1:4"]);
  });

  it("are reported without the parser's own words", () => {
    for (const text of [
      "a:\n\tb: 1",
      "a: b: c",
      'a: "b',
      "a: [b",
      "a: @b",
      "a: !x y",
      "--- a\n--- b",
      "? [x]: y",
    ])
      for (const { is, shouldBe } of treeOf(text, "f").problems)
        expect(`${is} ${shouldBe}`).not.toMatch(
          /scalar|implicit|mapping|flow|block|collection|node|YAML/i,
        );
  });

  it("are none where nothing is wrong, and at most two", () => {
    const place = () => ({ file: "f", line: 1, column: 1 });
    expect(explainYamlFaults([], "a: 1", place)).toEqual([]);
    const { errors } = parseDocument("a: b: c\n\nd: e: f\n\ng: h: i\n", { prettyErrors: false });
    expect(explainYamlFaults(errors, "", place).length).toBeLessThanOrEqual(2);
  });
});
