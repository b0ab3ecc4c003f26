import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/base/problems/problem.ts";
import { readDrip } from "../../../src/garden/plan/drip.ts";
import { wordsAt } from "../../../src/garden/plan/tree.ts";
import { least, planOf, told } from "./canonical.ts";

const AT = { file: "2027.yaml", line: 9, column: 11 };

function read(text: string) {
  const problems: Problem[] = [];
  const flow = readDrip(wordsAt(text, AT), problems);
  return { flow, problems };
}

const litres = (text: string) => Number(read(text).flow?.si.toFixed(2));

describe("the flow of a bed's drip lines", () => {
  it("is gallons or litres an hour, however that is written", () => {
    for (const text of ["12 gal an hour", "12 gallons per hour", "12 gal/h", "12 gph", "12 GPH"])
      expect(litres(text), text).toBe(45.42);
    for (const text of ["45 l an hour", "45 L/h", "45 litres each hour", "45 lph", "45 l per hr"])
      expect(litres(text), text).toBe(45);
    expect(litres("½ gal an hour")).toBe(1.89);
  });

  it("keeps what the gardener wrote", () => {
    expect(read("12 gal an hour").flow?.said).toEqual({ value: 12, unit: "gal" });
  });

  it("is none, and reported, without its unit, without an hour, of another kind or of zero", () => {
    for (const text of ["12", "12 gal", "12 an hour", "12 ft an hour", "0 gal an hour", "much"]) {
      const { flow, problems } = read(text);
      expect(flow, text).toBeNull();
      expect(
        problems.map(({ code, at }) => [code, at.line]),
        text,
      ).toEqual([["quantity-unclear", 9]]);
    }
    expect(read("12 gal").problems[0]?.shouldBe).toBe("Write 12 gal an hour or 45 l an hour");
  });

  it("is none, and nothing reported, where the plan says nothing", () => {
    const problems: Problem[] = [];
    expect(readDrip(null, problems)).toBeNull();
    expect(problems).toEqual([]);
  });
});

describe("a bed's drip in a plan", () => {
  const bed = (drip: string) => least(`beds:\n  Root bed:\n    is: 12 x 4 ft\n${drip}`);

  it("is in the bed, or null", () => {
    expect(planOf(bed("    drip: 45 l an hour")).beds[0]?.drip?.si).toBe(45);
    expect(planOf(bed("")).beds[0]?.drip).toBeNull();
  });

  it("is reported at its place where it is not understood", () => {
    expect(told(bed("    drip: 12 gal"))).toEqual(["quantity-unclear@10:11"]);
  });
});
