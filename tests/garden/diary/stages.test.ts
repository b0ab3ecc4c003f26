import { describe, expect, it } from "vitest";
import { STAGE_PHRASES } from "../../../src/garden/diary/stages.ts";

const stageOf = (text: string) => STAGE_PHRASES.find(({ pattern }) => pattern.test(text))?.stage;

describe("stages in a gardener's words", () => {
  it("are read from the beginning of a clause to its end", () => {
    for (const { pattern } of STAGE_PHRASES) {
      expect(pattern.source).toMatch(/^\^.*\$$/);
      expect(pattern.test("")).toBe(false);
    }
  });

  it("are up, in flower and first ripe", () => {
    const said = ["carrots up", "green in the carrots", "first flowers on squash", "peas in bloom"];
    expect(said.map(stageOf)).toEqual(["up", "up", "flower", "flower"]);
    for (const text of ["first ripe tomato", "tomatoes are ripening", "first tomato red"])
      expect(stageOf(text), text).toBe("first ripe");
    expect(stageOf("thinned the carrots")).toBeUndefined();
  });
});
