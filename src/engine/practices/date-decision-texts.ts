import { capital, type Day, degreesC, plus } from "../../base/index.ts";
import {
  type Figure,
  houseRule,
  isTender,
  type Outdoors,
  type SettingOut,
} from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { chanceOfFrostAfter, sayOdds } from "../climate/frost.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { hasCoolSeason } from "../growth/cool-season.ts";
import type { DateDecision, DateTest } from "../growth/date-decision.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { askedSoilC } from "../growth/warm-soil.ts";
import { type ReasonLines, type Sentence, type TextPiece, why } from "./sentence.ts";
import { sourcePieces } from "./source-pieces.ts";
import { isMany, type TaskParts, window } from "./task.ts";

/**
 * What a day was tested against: the chance of frost it may run, 0 to 1, the soil [°C] with its source, and how many weeks
 * from the frost of that chance the crop may begin, negative before it. `whenUp`: frost counts on the day it is up.
 */
export type Guards = {
  readonly chance: number;
  readonly soilMinC: Figure<number> | null;
  readonly weeks: number;
  readonly whenUp: boolean;
};

/** A crop's figure for its soil, or what is asked of a cool summer's. */
function askedHere(context: SowingContext, soilMinC: Figure<number>): Figure<number> {
  const asked = askedSoilC(context, soilMinC.value);
  if (asked === soilMinC.value) return soilMinC;
  return houseRule(asked, "less than elsewhere, since soil here is hardly warmer at its best");
}

/** What a start outdoors is tested against. */
export function outdoorGuards(context: SowingContext, facts: Outdoors): Guards {
  const { plan, crop } = context;
  const { weeksFromLastFrost } = facts;
  const soilMinC = askedHere(context, facts.soilMinC);
  const weeks = weeksFromLastFrost?.value ?? 0;
  return { chance: plan.risk.seed, soilMinC, weeks, whenUp: isTender(crop) };
}

/** What frost the usual date stands for: of every second spring. */
const USUAL_CHANCE = 0.5;

/** What setting raised plants out is tested against: what frost kills runs the plan's own chance, the rest goes by the usual date. */
export function settingOutGuards(context: SowingContext, facts: SettingOut): Guards {
  const { plan, crop } = context;
  const { weeksFromLastFrost } = facts;
  const soilMinC = facts.soilMinC && askedHere(context, facts.soilMinC);
  const chance = isTender(crop) ? plan.risk.raised : USUAL_CHANCE;
  return { chance, soilMinC, weeks: weeksFromLastFrost.value, whenUp: false };
}

/** Days that a start outdoors may wait without harm. Source: house rule; two weeks of a short season. */
const MAY_WAIT_DAYS = 14;

/** What sowing and planting where it is to grow have alike: the day reckoned, fine for two weeks, and how it came about. */
export function startParts(context: SowingContext, decision: DateDecision, guards: Guards) {
  const { planting, sowing } = context;
  const fixed = planting.fixed.start !== null;
  const { day } = decision;
  return {
    window: window(day, day, fixed ? day : plus(day, MAY_WAIT_DAYS)),
    harm: "this week",
    rhythm: "session",
    because: testReasons(context, decision, guards),
    basis: decision.basis,
    certainty: fixed ? "fixed" : "expected",
    sets: { planting: planting.key, sowing, act: "start" },
  } as const satisfies Partial<TaskParts>;
}

/** `3 weeks before`, `a week after`. */
function weeksFrom(weeks: number): string {
  const size = Math.abs(weeks);
  return `${size === 1 ? "a week" : `${size} weeks`} ${weeks < 0 ? "before" : "after"}`;
}

/** What the gardener's own day was: the day itself, the time she named, or one to wait for. */
function givenPieces({ planting }: SowingContext, day: Day): readonly TextPiece[] {
  if (planting.notBefore === day) return ["You said not before ", { day }, "."];
  return planting.within ? ["You asked for this time."] : ["You asked for ", { day }, "."];
}

/** A test's sentence, and where it says a figure, whose that is. */
function testReason(
  context: SowingContext,
  test: DateTest,
  { reckoned: decision, guards }: { readonly reckoned: DateDecision; readonly guards: Guards },
): ReasonLines {
  switch (test.basis) {
    case "last frost":
      return frostReason(context, test, guards);
    case "soil":
      return soilReason(context, test.day, { reckoned: decision, guards });
    case "given":
      return [givenPieces(context, test.day)];
    case "place free":
      return [["Its place is free from ", { day: test.day }, "."]];
    case "first frost":
      return [["Counted from the usual frosts of autumn, it gives ", { day: test.day }, "."]];
    case "age":
      return [["They are old enough from ", { day: test.day }, "."]];
    case "heat":
      return [["From ", { day: test.day }, " on it is past the heat."]];
    case "day length":
      return [["Sown from ", { day: test.day }, " on, the long days no longer make it bolt."]];
    case "cold":
      return isTender(context.crop)
        ? [["Nights are mild enough from about ", { day: test.day }, " on."]]
        : [["Sown from ", { day: test.day }, " on, the cold no longer makes it bolt."]];
    default:
      return [["The time of year gives ", { day: test.day }, "."]];
  }
}

function soilReason(
  { climate, plan }: SowingContext,
  day: Day,
  { reckoned: decision, guards }: { readonly reckoned: DateDecision; readonly guards: Guards },
): ReasonLines {
  const { soilMinC } = guards;
  const rough = climate.rough ? ", a rough guess from your frost dates" : "";
  const spread = day === decision.day ? spreadPieces(decision) : [];
  if (!soilMinC) return [["The ground can be planted from about ", { day }, rough, ...spread, "."]];
  const at = { quantity: degreesC(soilMinC.value) };
  const isNever = day === seasonOf(plan).to;
  return [
    isNever
      ? ["The soil never gets to ", at, " in a usual year", rough, "."]
      : ["The soil is at ", at, " from about ", { day }, rough, ...spread, "."],
    [at, " is the figure of ", ...sourcePieces(soilMinC.source), "."],
  ];
}

/** Days past the usual one after which a cold season no longer gets there in time. Source: house rule; two months. */
const TOO_LATE_DAYS = 60;

/** How far warm and cold seasons move the day; nothing where they don't. */
function spreadPieces({ early, day, late }: DateDecision): readonly TextPiece[] {
  if (early === late) return [];
  const warm: readonly TextPiece[] =
    early < day ? ["; a warm season makes it ", { day: early }] : [];
  const and = warm.length > 0 ? ", a cold one " : "; a cold season ";
  if (late === day) return warm;
  return late - day > TOO_LATE_DAYS
    ? [...warm, `${and}never gets that far`]
    : [...warm, `${and}makes it `, { day: late }];
}

function frostReason(
  { plan, bed, climate }: SowingContext,
  test: DateTest,
  guards: Guards,
): ReasonLines {
  const odds = sayOdds(guards.chance, "spring");
  const frost = { day: test.frost ?? plus(test.day, -7 * guards.weeks) };
  const weeks = guards.weeks === 0 ? "" : `${weeksFrom(guards.weeks)} that `;
  const after: readonly TextPiece[] = guards.whenUp
    ? [
        "; sown ",
        { day: test.day },
        `, it is not up before ${weeks === "" ? "that" : `${weeks}day`}`,
      ]
    : weeks === ""
      ? []
      : [`; ${weeks}is `, { day: test.day }];
  const place = climate.underGlass ? " gets under the glass" : " comes";
  const reason = [`Frost${place} after `, frost, ` in ${odds}`, ...after, "."];
  const dates = frostsAt(plan.site, bed).lastFrost;
  if (!dates) return [reason];
  const [early, usual, late] = [{ day: dates.early }, { day: dates.usual }, { day: dates.late }];
  const where = climate.underGlass ? "in there" : "here";
  return [
    reason,
    [`The last frost ${where}: early `, early, ", usual ", usual, ", late ", late, "."],
  ];
}

/** Each test a day had to pass, as `why` tells it, the one that decided first. */
export function testReasons(
  context: SowingContext,
  decision: DateDecision,
  guards: Guards,
): ReasonLines {
  const tests = [...decision.tests].sort((a, b) => b.day - a.day);
  const reason = tests.flatMap((test) => testReason(context, test, { reckoned: decision, guards }));
  return decision.stopped && decision.stop !== null
    ? [["It is held no later than ", { day: decision.stop }, "."], ...reason]
    : reason;
}

/** From this chance of frost on, a gardener keeps fabric within reach. Source: house rule; one spring in four. */
const KEEP_FABRIC = 0.25;

/** How many springs still have a frost, and where those are many, what to have at hand. */
function oddsLeft(chance: number, underGlass: boolean): Sentence {
  const springs = chance === 0.5 ? "half of all springs" : sayOdds(chance, "spring");
  const have = springs.includes("springs") ? "have" : "has";
  const after = `still ${have} a frost ${underGlass ? "in there " : ""}after this`;
  return chance < KEEP_FABRIC
    ? why(springs.startsWith("1 ") ? `Only ${springs} ${after}.` : `${capital(springs)} ${after}.`)
    : why(`${capital(springs)} ${after}; keep fabric handy.`);
}

/** The chance of frost after a day; of a crop that waits no weeks beyond its frost day it is the plan's own. */
function chanceLeft({ plan, bed }: SowingContext, day: Day, { chance, weeks, whenUp }: Guards) {
  const dates = frostsAt(plan.site, bed).lastFrost;
  return weeks > 0 && !whenUp && dates ? chanceOfFrostAfter(dates, day) : chance;
}

/** The one reason that decided, as an event's text says it. */
export function whyDecided(
  context: SowingContext,
  decision: DateDecision,
  guards: Guards,
): Sentence {
  if (decision.stopped)
    return why("The soil is still cold, but the season is too short to wait longer.");
  const last = decision.tests.reduce((a, b) => (b.day > a.day ? b : a));
  switch (last.basis) {
    case "last frost":
      return guards.weeks < 0
        ? why(`About ${weeksFrom(guards.weeks)} the usual last frost, as early as it may go in.`)
        : oddsLeft(chanceLeft(context, last.day, guards), context.climate.underGlass);
    case "soil":
      return guards.soilMinC
        ? why("The soil should have warmed to ", { quantity: degreesC(guards.soilMinC.value) }, ".")
        : why("The ground should have thawed and drained.");
    case "given":
      return why(...givenPieces(context, last.day));
    case "place free":
      return why("Its place is free now.");
    case "heat":
      return hasCoolSeason(context) && !isTender(context.crop)
        ? why("Cool months are ahead, and it grows on through them.")
        : why("Sown now it is past the summer's heat when it is ready.");
    case "day length":
      return why("Sown now the long days no longer make it bolt.");
    case "cold":
      return isTender(context.crop)
        ? why(`Nights should be mild enough for ${isMany(context) ? "them" : "it"} from now on.`)
        : why("Sown earlier, the cold would make it bolt.");
    case "first frost":
      return why("It is for the winter: grown by autumn, and not old and tough before.");
    default:
      return context.climate.underGlass
        ? why("The days are long enough now to grow under glass.")
        : why("It is the time of year.");
  }
}
