import { describe, expect, it } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { namedPractice, practiceNames, practiceWords } from "../../../src/garden/plan/practices.ts";

describe("practices by name", () => {
  it("knows each by its plain name", () => {
    for (const name of practiceNames(PRACTICES)) expect(namedPractice(name, PRACTICES)).toBe(name);
  });

  it("knows gerunds and close words of the trade", () => {
    const means = {
      weeding: "weed",
      Thinning: "thin",
      "earthing up": "hill",
      "potting up": "pot on",
      netting: "cover",
      "hardening off": "harden off",
      "winter sowing": "winter-sow",
      vents: "greenhouse",
      "closing the bed": "close the bed",
      draining: "drain the lines",
      "warming the bed": "warm the bed",
    };
    for (const [word, name] of Object.entries(means))
      expect(namedPractice(word, PRACTICES)).toBe(name);
  });

  it("has each word once", () => {
    const words = practiceWords(PRACTICES);
    expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
  });

  it("gives every word it lists a practice, and no other word", () => {
    for (const word of practiceWords(PRACTICES))
      expect(practiceNames(PRACTICES)).toContain(namedPractice(word, PRACTICES));
    for (const word of ["singing", "", "toString"])
      expect(namedPractice(word, PRACTICES)).toBeNull();
  });
});
