import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/base/problems/problem.ts";
import { drawnFor, samples } from "../../depth.ts";
import { read, TEXT } from "./canonical.ts";
import { FAULTS } from "./faultkinds.ts";

const PLANS = samples(1000, 250);
const PER_KIND = Math.ceil(PLANS / FAULTS.length);

type Case = { readonly name: string; readonly text: string; readonly line: number };

function cases(): readonly Case[] {
  return FAULTS.flatMap(({ name, at, change }) => {
    const lines = TEXT.split("\n");
    const fitting = lines.flatMap((line, index) => (at.test(line) ? [index] : []));
    return Array.from({ length: PER_KIND }, (_, round) => {
      const roll = drawnFor(round * 1009 + name.length);
      const index = fitting[Math.floor(roll() * fitting.length)] ?? -1;
      const changed = change(lines[index] ?? "", roll);
      const text = [...lines.slice(0, index), ...changed.lines, ...lines.slice(index + 1)].join(
        "\n",
      );
      return { name, text, line: index + 1 + (changed.told ?? 0) };
    });
  });
}

function isOn(line: number) {
  return ({ at, weight }: Problem) => weight === "problem" && at.line === line;
}

describe(`${PLANS} plans with one fault each`, () => {
  it("has no problem and no doubt where there is no fault", () => {
    expect(read(TEXT).problems).toEqual([]);
  });

  it("knows at least twenty-five kinds of fault and makes that many plans of them", () => {
    expect(new Set(FAULTS.map(({ name }) => name)).size).toBeGreaterThanOrEqual(25);
    expect(cases().length).toBeGreaterThanOrEqual(PLANS);
  });

  for (const { name } of FAULTS)
    it(`reports on its line, with at most three problems in all: ${name}`, () => {
      for (const { text, line } of cases().filter((one) => one.name === name)) {
        const { plan, problems } = read(text);
        const seen = `${text
          .split("\n")
          .slice(line - 2, line + 1)
          .join("\n")}\n${JSON.stringify(problems)}`;
        expect(plan, seen).toBeNull();
        expect(problems.some(isOn(line)), seen).toBe(true);
        expect(problems.length, seen).toBeLessThanOrEqual(3);
      }
    });
});
