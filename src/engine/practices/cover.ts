import { type Day, latest, plus } from "../../base/index.ts";
import { coverNamed, coverWords, type Pest } from "../../crops/index.ts";
import { type Anchors, anchorKey } from "../growth/anchors.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { growsOnFrom } from "../growth/through-winter.ts";
import { regionOf } from "../rules/regions.ts";
import type { CoverDay, CoverPeriod } from "./cover-days.ts";
import { coversOf } from "./cover-periods.ts";
import { howCovered, pestFactsIn } from "./cover-pests.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { sowingNumbers } from "./repeat.ts";
import { caution, how, type Sentence, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Covers that are one net: of one bed, against the same pest, at the same time; the first to go on stands first. */
type SharedCover = readonly [CoverPeriod, ...CoverPeriod[]];

function tasks({ contexts, anchors }: WholeGarden): readonly TaskOf<"cover">[] {
  return sharedCoversOf(contexts.flatMap(coversOf)).flatMap((shared) => [
    ...shared.filter(isToPutOn).map((each) => onTask(each, shared)),
    ...offTasks(shared, (period) => lastEndOf(period, anchors)),
  ]);
}

/** The day the last sowing under a cover is out of its place; null where that is not known. */
function lastEndOf({ context }: CoverPeriod, anchors: Anchors): Day | null {
  const { planting } = context;
  const ends = sowingNumbers(context).map(
    (sowing) => anchors.get(anchorKey(planting.key, sowing, "end"))?.day ?? null,
  );
  return ends.includes(null) ? null : ends.reduce((a, b) => (a && b && a > b ? a : b), null);
}

/** What was sown in an earlier year is covered already; what stands for years is covered each year. */
const isToPutOn = ({ context: { planting, crop } }: CoverPeriod) =>
  planting.inSince === null || crop.perennial !== null;

/** Covers put together that share a net, each lot in the order they go on. */
function sharedCoversOf(all: readonly CoverPeriod[]): readonly SharedCover[] {
  const lots: SharedCover[] = [];
  const inOrder = [...all].sort((a, b) => a.on.window.due - b.on.window.due || byKey(a, b));
  for (const each of inOrder) {
    const at = lots.findIndex((lot) => goesUnder(each, lot));
    const lot = lots[at];
    if (lot) lots[at] = [...lot, each];
    else lots.push([each]);
  }
  return lots;
}

/** Which of two on one day is first must not hang on the order of the plan. */
const byKey = (a: CoverPeriod, b: CoverPeriod) =>
  a.context.planting.key < b.context.planting.key ? -1 : 1;

function goesUnder(each: CoverPeriod, lot: SharedCover): boolean {
  const { bed } = each.context.planting;
  if (bed === null) return false;
  const [first] = lot;
  return (
    first.context.planting.bed === bed &&
    first.against === each.against &&
    (each.against !== null || first.thing === each.thing) &&
    lot.some(({ off }) => off === null || off.window.due >= each.on.window.due)
  );
}

const because = ({ stage }: CoverDay) => [[stage.told, { day: stage.day }, "."]];

function onTask(period: CoverPeriod, shared: SharedCover): TaskOf<"cover"> {
  const { context, on, suffix } = period;
  const { thing } = shared[0];
  const later = period !== shared[0];
  return plantingTask(context, "cover", `on${suffix}`, {
    window: on.window,
    harm: "this week",
    rhythm: "session",
    minutes: later ? 5 : 10,
    title: { verb: `${coverNamed(thing).title} over`, object: objectOf(context), where: "bed" },
    say: later ? sayUnder(period, thing) : sayOn(period),
    because: because(on),
    basis: on.basis,
    needs: later ? [] : [coverNamed(thing).needs],
    hangsOn: anchorTaskIds(context, "start", "set out"),
  });
}

const factsOf = ({ plan }: SowingContext, against: Pest) =>
  pestFactsIn(regionOf(plan.site), against);

/** Why a cover that the plan asks for goes on then. */
function whyAskedFor({ thing, on: { stage, basis } }: CoverPeriod): Sentence {
  if (thing !== "cloche") return why("You asked for it; it goes on the day the crop goes in.");
  if (basis.includes("first frost"))
    return why("It grows on for weeks under them; first frost is about ", { day: stage.day }, ".");
  return why("The soil warms under cloches for two weeks before ", { day: stage.day }, ".");
}

function sayOn(period: CoverPeriod): readonly Sentence[] {
  const { against, thing, context, on } = period;
  if (against === null) return [how(howCovered(thing, false)), whyAskedFor(period)];
  const { keepsOff, sealed, wintersAfter } = factsOf(context, against);
  const shows = context.crop.covers.find((cover) => cover.against === against)?.on === "up";
  return [
    how(howCovered(thing, sealed)),
    sign(
      growsOnFrom(context) === on.window.due
        ? "New leaves grow after the winter."
        : shows
          ? "The first seedlings show."
          : "They have just gone in.",
    ),
    why(keepsOff),
    ...(wintersAfter === null
      ? []
      : [
          caution(
            `Leave the ${thing} off where ${wintersAfter} grew last year: pests that wintered in the soil would be shut in.`,
          ),
        ]),
  ];
}

function sayUnder(
  { against, context }: CoverPeriod,
  thing: CoverPeriod["thing"],
): readonly Sentence[] {
  const facts = against === null ? null : factsOf(context, against);
  const shut = facts?.sealed ? "bury the edges again" : "peg the edges down again";
  return [
    how(`Lift the ${thing}, tuck the ${objectOf(context)} under, and ${shut}.`),
    ...(facts === null ? [] : [why(facts.keepsOff)]),
  ];
}

/** Days by which a plant may outgrow a net against birds before those beside it do. Source: house rule; two weeks bend no peas. */
const OUTGROWN_DAYS = 14;

/** Whether it has long outgrown the net of what was sown beside it later, which lies on pegs and is soon drawn back. */
const outgrows = ({ against, off }: CoverPeriod, last: Day) =>
  against === "birds" && off !== null && plus(off.window.due, OUTGROWN_DAYS) < last;

/** The last day on which one of some covers comes off. */
const lastOff = (periods: readonly CoverPeriod[]) =>
  periods.reduce<CoverPeriod["off"]>(
    (late, { off }) => (late && off && late.window.due >= off.window.due ? late : off),
    null,
  );

/** What bees must reach, and what has outgrown it, comes off by itself; all the rest on one day, when the last of them may. */
function offTasks(shared: SharedCover, endOf: EndOf): readonly TaskOf<"cover">[] {
  const together = shared.filter(({ forBees, off }) => !forBees && off);
  const end = lastOff(together)?.window.due ?? null;
  const early = together.filter((each) => end !== null && outgrows(each, end));
  const own = [...shared.filter(({ forBees }) => forBees), ...early];
  const rest = together.filter((each) => !early.includes(each));
  const last = lastOff(rest);
  const { under, off } = stillUnder(rest, last, endOf);
  const [lead, ...others] = under;
  const withOthers = lead && others.length > 0 ? idOf(lead, "off") : null;
  return [
    ...own.flatMap((each) =>
      each.off ? [offTask(each, each.off, { shared, together: null })] : [],
    ),
    ...under.flatMap((each) => (off ? [offTask(each, off, { shared, together: withOthers })] : [])),
  ];
}

type EndOf = (period: CoverPeriod) => Day | null;

/** Days after a harvest is over within which its net is still taken off with the others. Source: house rule, a week. */
const STILL_THERE_DAYS = 7;

/**
 * Those that still stand under a shared cover when it comes off, and that day: what was cleared before has nothing over it.
 * Where all are cleared sooner, it comes off with the last of them.
 */
function stillUnder(
  rest: readonly CoverPeriod[],
  last: CoverPeriod["off"],
  endOf: EndOf,
): { readonly under: readonly CoverPeriod[]; readonly off: CoverPeriod["off"] } {
  if (!last) return { under: rest, off: last };
  const isThere = (end: Day | null) =>
    end === null || plus(end, STILL_THERE_DAYS) >= last.window.due;
  const under = rest.filter((each) => isThere(endOf(each)));
  const ends = rest.map((each) => endOf(each) ?? last.window.due);
  if (under.length > 0) return { under, off: last };
  const over = latest(...ends);
  const off: CoverDay = {
    ...last,
    window: window(over, plus(over, 1), plus(over, STILL_THERE_DAYS)),
    stage: { day: over, told: "The last under it is out about " },
  };
  return { under: rest.filter((each) => endOf(each) === over), off };
}

const idOf = ({ context, suffix }: CoverPeriod, step: "on" | "off") =>
  `${context.planting.key}/cover/${step}${suffix}`;

function offTask(
  period: CoverPeriod,
  off: CoverDay,
  { shared, together }: { readonly shared: SharedCover; readonly together: string | null },
): TaskOf<"cover"> {
  const { context, suffix, forBees } = period;
  return plantingTask(context, "cover", `off${suffix}`, {
    window: off.window,
    harm: forBees ? "this week" : "when you can",
    rhythm: "session",
    minutes: 5,
    title: {
      verb: `${coverNamed(shared[0].thing).title} off`,
      object: objectOf(context),
      where: "bed",
    },
    say: sayOff(period, off, shared),
    because: because(off),
    basis: off.basis,
    hangsOn: anchorTaskIds(off.context, "start", "set out"),
    together,
    after: [idOf(period, "on")],
  });
}

const takeOff = (thing: string) =>
  thing === "cloches"
    ? "Take the cloches off, wash them and put them away dry."
    : `Take the ${thing} off, shake it out and dry it before it is put away.`;

/** Why a cover that the plan asks for comes off; null for one that its crop has outgrown. */
function whyOff({ crop }: CoverPeriod["context"], against: CoverPeriod["against"]): string | null {
  if (against !== null) return null;
  return crop.perennial ? "Its harvest is over for this year." : "Frost hardly comes after this.";
}

/** The sign for taking it off, of the last sowing where there are several. */
const signOff = (mark: string, { context }: CoverDay) =>
  context.sowing === 1 ? mark : `In the last sowing too, ${uncapital(mark)}`;

const uncapital = (text: string) => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** Days that a net stays on past its own time for what stands beside it before that is said. Source: house rule. */
const LONGER_DAYS = 21;

/** The sign of a cover that comes off for itself, or with the last that it is for. */
function offSignOf({ context, off: own, offSign }: CoverPeriod, off: CoverDay): string {
  const longer = own !== null && off.window.due - own.window.due > LONGER_DAYS;
  const last = objectOf(off.context);
  if (!longer || last === objectOf(context)) return offSign ?? "They are tall enough.";
  return `It is time for ${last} too, under the same cover.`;
}

const alone = (thing: string) =>
  `Lift the ${thing} off these alone; it stays over what is beside them.`;

function sayOff(period: CoverPeriod, off: CoverDay, shared: SharedCover): readonly Sentence[] {
  const { forBees, against, context } = period;
  const { title } = coverNamed(shared[0].thing);
  const thing = title.toLowerCase();
  if (!forBees)
    return [
      how(
        shared.some((each) => each.off && outgrows(period, each.off.window.due))
          ? alone(thing)
          : takeOff(thing),
      ),
      sign(signOff(offSignOf(period, off), off)),
      why(
        period.offWhy ??
          whyOff(context, against) ??
          (off.basis.includes("first frost")
            ? `Nothing that the ${thing} keeps off flies any more.`
            : `They have outgrown what the ${thing} was for.`),
      ),
    ];
  const others = shared.some((each) => !each.forBees);
  return [
    how(others ? alone(thing) : takeOff(thing)),
    sign("The first flower opens."),
    why("Bees must reach the flowers, or there is no fruit."),
  ];
}

/** What a diary calls the things that cover. */
const THINGS = ["covers?", ...coverWords("plants", (name) => name !== "board")].join("|");

/** Covers on and off by the plant's stage: plantings of a bed share one against the same pest, and none shuts bees out. */
export const COVER = definePractice({
  name: "cover",
  past: { whole: "covered", on: "covered", off: "uncovered" },
  words: ["covering", "covers", "a cover", "netting"],
  deeds: [
    deed(
      [
        `(?:took (?:the )?)?(?:${THINGS}) (?:back )?off …`,
        `(?:removed (?:the )?)?(?:${THINGS}) (?:removed )?from …`,
        ...verb("uncovered", `uncovered|(?:${THINGS}) off`),
      ],
      { step: "off" },
    ),
    deed(
      [
        `(?:put )?(?:the |a |some )?(?:${THINGS}) (?:back )?(?:on|over) …`,
        ...verb(
          "covered|netted|fleeced|cloched",
          `covered|netted|fleeced|under (?:${THINGS})|(?:${THINGS}) on`,
        ),
      ],
      { step: "on" },
    ),
  ],
  tasks: { shared: tasks },
});
