import { sayOdds } from "../climate/frost.ts";
import type { Outdoors, SettingOut } from "../crops/facts.ts";
import { type Day, plus } from "../days/day.ts";
import type { Growing } from "../growth/growing.ts";
import type { Reckoned, Test } from "../growth/reckoned.ts";
import { degreesC } from "../quantities/quantity.ts";
import { type Piece, type Sentence, why } from "./say.ts";
import { type Telling, window } from "./task.ts";

/**
 * What a day was tested against: the risk (raised plants run one, seed in the ground another), the soil [°C], and
 * how many weeks from the frost of that risk the crop may begin, negative before it.
 */
export type Guards = {
  readonly risk: "raised" | "seed";
  readonly soilMinC: number | null;
  readonly weeks: number;
};

/** What a start outdoors is tested against. */
export function outdoorGuards({ soilMinC, weeksFromLastFrost }: Outdoors): Guards {
  return { risk: "seed", soilMinC: soilMinC.value, weeks: weeksFromLastFrost?.value ?? 0 };
}

/** What setting raised plants out is tested against. */
export function settingOutGuards({ soilMinC, weeksFromLastFrost }: SettingOut): Guards {
  return { risk: "raised", soilMinC: soilMinC?.value ?? null, weeks: weeksFromLastFrost.value };
}

/** Days that a start outdoors may wait without harm. Source: house rule; two weeks of a short season. */
const MAY_WAIT_DAYS = 14;

/** What sowing and planting where it is to grow have alike: the day reckoned, fine for two weeks, and how it came about. */
export function startTold(growing: Growing, reckoned: Reckoned, guards: Guards) {
  const { planting, sowing } = growing;
  const fixed = planting.fixed.start !== null;
  const { day } = reckoned;
  return {
    window: window(day, day, fixed ? day : plus(day, MAY_WAIT_DAYS)),
    harm: "this week",
    rhythm: "session",
    because: testsTold(growing, reckoned, guards),
    grounds: reckoned.grounds,
    certainty: fixed ? "fixed" : "expected",
    sets: { planting: planting.key, sowing, act: "start" },
  } as const satisfies Partial<Telling>;
}

/** `3 weeks before`, `a week after`. */
function weeksFrom(weeks: number): string {
  const size = Math.abs(weeks);
  return `${size === 1 ? "a week" : `${size} weeks`} ${weeks < 0 ? "before" : "after"}`;
}

function testTold(growing: Growing, test: Test, guards: Guards): readonly Piece[] {
  const odds = sayOdds(growing.plan.risk[guards.risk], "spring");
  switch (test.ground) {
    case "last frost":
      return frostTold(test.day, odds, guards.weeks);
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
    case "age":
      return ["They are old enough from ", { day: test.day }, "."];
    default:
      return ["The time of year gives ", { day: test.day }, "."];
  }
}

function frostTold(day: Day, odds: string, weeks: number): readonly Piece[] {
  const frost = { day: plus(day, -7 * weeks) };
  if (weeks === 0) return ["Frost comes after ", frost, ` in ${odds}.`];
  return ["Frost comes after ", frost, ` in ${odds}; ${weeksFrom(weeks)} that is `, { day }, "."];
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
      return guards.weeks < 0
        ? why(`About ${weeksFrom(guards.weeks)} the usual last frost, as early as it may go in.`)
        : why(`Only ${odds} still has a frost after this.`);
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
