import { describe, expect, it } from "vitest";
import {
  namedPractice,
  PRACTICE_NAMES,
  PRACTICE_WORDS,
} from "../../../src/garden/plan/practices.ts";

describe("practices by name", () => {
  it("knows each by its plain name", () => {
    for (const name of PRACTICE_NAMES) expect(namedPractice(name)).toBe(name);
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
    for (const [word, name] of Object.entries(means)) expect(namedPractice(word)).toBe(name);
  });

  it("gives every word it lists a practice, and no other word", () => {
    for (const word of PRACTICE_WORDS) expect(PRACTICE_NAMES).toContain(namedPractice(word));
    for (const word of ["singing", "", "toString"]) expect(namedPractice(word)).toBeNull();
  });
});
