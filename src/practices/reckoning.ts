import { sayOdds } from "../climate/frost.ts";
import type { Growing } from "../growth/growing.ts";
import type { Reckoned, Test } from "../growth/starting.ts";
import { degreesC } from "../quantities/quantity.ts";
import { type Piece, type Sentence, why } from "./say.ts";

/** Which loss the frost test guards: raised plants run one risk, seed in the ground another. */
export type Guards = { readonly risk: "raised" | "seed"; readonly soilMinC: number | null };

function testTold(growing: Growing, test: Test, guards: Guards): readonly Piece[] {
  const odds = sayOdds(growing.plan.risk[guards.risk], "spring");
  switch (test.ground) {
    case "last frost":
      return [`With a frost after it in ${odds}, the frost test gives `, { day: test.day }, "."];
    case "soil":
      return [
        "The soil is at ",
        { quantity: degreesC(guards.soilMinC ?? 0) },
        ` from about `,
        { day: test.day },
        growing.climate.rough ? ", a rough estimate from the frost dates." : ".",
      ];
    case "given":
      return ["The plan asks for ", { day: test.day }, " or later."];
    case "place free":
      return ["Its place is free from ", { day: test.day }, "."];
    case "first frost":
      return ["Counted from the usual killing frost of autumn, it gives ", { day: test.day }, "."];
    default:
      return ["The time of year gives ", { day: test.day }, "."];
  }
}

/** Each test a day had to pass, as `why` tells it, the one that decided first. */
export function testsTold(
  growing: Growing,
  reckoned: Reckoned,
  guards: Guards,
): readonly (readonly Piece[])[] {
  const tests = [...reckoned.tests].sort((a, b) => b.day - a.day);
  const told = tests.map((test) => testTold(growing, test, guards));
  return reckoned.stopped && reckoned.stop !== null
    ? [["It is held no later than ", { day: reckoned.stop }, "."], ...told]
    : told;
}

/** The one reason that decided, as an event's text says it. */
export function whyDecided(growing: Growing, reckoned: Reckoned, guards: Guards): Sentence {
  const rough = growing.climate.rough ? " A rough guess, from the frost dates alone." : "";
  if (reckoned.stopped)
    return why("The soil is still cold, but the season is too short to wait longer.");
  const last = reckoned.tests.reduce((a, b) => (b.day > a.day ? b : a));
  const odds = sayOdds(growing.plan.risk[guards.risk], "spring");
  switch (last.ground) {
    case "last frost":
      return why(`Only ${odds} still has a frost worth fearing.`);
    case "soil":
      return why(
        "The soil should have warmed to ",
        { quantity: degreesC(guards.soilMinC ?? 0) },
        `.${rough}`,
      );
    case "given":
      return why("The plan asks for this day.");
    case "place free":
      return why("Its place is free now.");
    default:
      return why("It is the time of year.");
  }
}
