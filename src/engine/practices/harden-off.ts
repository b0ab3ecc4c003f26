import { type Day, degreesC, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { isRaisedInShade } from "../growth/summer-raised.ts";
import { deed, RAISED, verb } from "./deeds.ts";
import {
  ALL_DAY,
  type HardeningRung,
  type HeldRung,
  ladderOf,
  NIGHTS,
  WHOLE_DAYS,
} from "./ladder.ts";
import { definePractice } from "./practice.ts";
import { how, type Sentence, why } from "./sentence.ts";
import { anchorTaskIds, isMany, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

function placeText(rung: HardeningRung): string {
  if (rung.out === "night") return "";
  if (rung.out === ALL_DAY)
    return "Out all day, in full sun and a little wind, and back in by dusk.";
  const hours = rung.out / 60;
  const time = hours === 1 ? "one hour" : `${hours} hours`;
  if (rung.number <= 3) return `Out for ${time}, in full shade and out of the wind.`;
  return `Out for ${time}: early sun, then shade, out of the wind.`;
}

/** Where and for how long, alone in its sentence, since plants that go out on one day may differ in nothing else. */
function outSay(rung: HeldRung, { setOut, floorC }: LadderParts): readonly Sentence[] {
  const instructions =
    rung.out === "night"
      ? [
          how(
            "Leave them out tonight if it stays above ",
            { quantity: degreesC(floorC) },
            "; if not, bring them in.",
          ),
          how("Water in the morning, less than before."),
        ]
      : [
          how(placeText(rung)),
          how("Water first. A cold or windy day: give the last hours again instead."),
        ];
  return [
    ...instructions,
    ...heldSentences(rung),
    why("Out for good about ", { day: setOut }, "."),
  ];
}

/** `In on 9 and 10 May: too cold by the forecast. The same hours come now.`; none where nothing held it. */
function heldSentences({ held }: HeldRung): readonly Sentence[] {
  const [first] = held;
  if (first === undefined) return [];
  const days = held.flatMap(({ day }, i) => [...(i === 0 ? [] : [" and "]), { day }]);
  const whys = [...new Set(held.map(({ why }) => why))].join(" and ");
  return [why("Not on ", ...days, `: the forecast is too ${whys}, and they stay in.`)];
}

/** What all rungs of one ladder share. */
type LadderParts = Pick<TaskOf, "because" | "basis" | "hangsOn"> & {
  readonly object: string;
  /** `goes` or `go`, as the object is one or many. */
  readonly goes: string;
  readonly setOut: Day;
  readonly floorC: number;
};

function rungTasks(
  context: SowingContext,
  rung: HeldRung,
  shared: LadderParts,
): readonly TaskOf<"harden off">[] {
  const { object, because, basis, hangsOn } = shared;
  const night = rung.out === "night";
  const lasts = rung.out === "night" ? 0 : rung.out;
  const run = `${context.planting.key}/${rung.number}`;
  const task = (part: "out" | "in", verb: string, say: readonly Sentence[]) =>
    plantingTask(context, "harden off", `${part}-${rung.number}`, {
      window: window(rung.day, rung.day, rung.day),
      harm: part === "in" ? "tonight" : "this week",
      rhythm: "timed",
      minutes: 15,
      timed: { run, part, lasts },
      title: { verb, object, where: null },
      say,
      because,
      basis,
      hangsOn,
    });
  const out = task("out", night ? "Leave out overnight:" : "Carry out", outSay(rung, shared));
  return night ? [out] : [out, task("in", "Bring in", [BACK])];
}

const BACK = how(
  "Back inside, in good light. Leaves that curl or pale want the same hours again tomorrow.",
);

function hardySteps(
  context: SowingContext,
  setOut: Day,
  days: number,
  floorC: number,
): readonly TaskOf<"harden off">[] {
  const object = objectOf(context);
  const shared = {
    harm: "this week",
    rhythm: "daily",
    minutes: 10,
    because: [["Counted back from setting out, ", { day: setOut }, "."]],
    basis: anchorOf(context, "set out")?.basis ?? [],
    hangsOn: anchorTaskIds(context, "set out"),
  } as const;
  const outFrom = plus(setOut, -days);
  const nightsFrom = plus(setOut, -NIGHTS);
  return [
    plantingTask(context, "harden off", "days", {
      ...shared,
      window: window(plus(outFrom, -2), outFrom, plus(outFrom, 2)),
      title: { verb: "Start hardening off", object, where: null },
      say: [
        how("Out in a sheltered place by day from now on, a little longer each day; in at night."),
      ],
    }),
    plantingTask(context, "harden off", "nights", {
      ...shared,
      window: window(plus(nightsFrom, -1), nightsFrom, plus(nightsFrom, 1)),
      title: { verb: "Leave out overnight:", object, where: null },
      say: [
        context.plan.site.lastFrost
          ? how(
              "Nights out from now on: under fabric where it falls below ",
              { quantity: degreesC(floorC) },
              ", and back in before a hard frost.",
            )
          : how(
              "Nights out from now on where they stay above ",
              { quantity: degreesC(floorC) },
              ".",
            ),
      ],
    }),
  ];
}

/** Days in which plants get used to a bed under glass. Source: house rule; there is no wind in there, and less sun. */
const UNDER_GLASS_DAYS = 4;

/**
 * What moves under glass needs no ladder: some days in there, if it was raised where it is warmer: in the house, or in a
 * greenhouse that is heated and the bed is not.
 */
function underGlassStep(context: SowingContext, setOut: Day): readonly TaskOf<"harden off">[] {
  const raisedIn = context.plan.site.greenhouse;
  const heated = raisedIn === null || raisedIn.keptAbove !== null;
  if (!heated || (raisedIn !== null && (context.bed?.keptAbove ?? null) !== null)) return [];
  const from = plus(setOut, -UNDER_GLASS_DAYS);
  return [
    plantingTask(context, "harden off", "days", {
      window: window(plus(from, -2), from, plus(from, 2)),
      harm: "when you can",
      rhythm: "daily",
      minutes: 10,
      title: { verb: "Stand … in the bed by day", object: objectOf(context), where: "bed" },
      say: [
        how(
          "In their new place by day from now on, out of hard sun at first; back in the warm at night.",
        ),
        why("They are planted there about ", { day: setOut }, "."),
      ],
      because: [["Some days before they are planted under glass, ", { day: setOut }, "."]],
      basis: anchorOf(context, "set out")?.basis ?? [],
      hangsOn: anchorTaskIds(context, "set out"),
    }),
  ];
}

function tasks(context: SowingContext): readonly TaskOf<"harden off">[] {
  const { planting, crop } = context;
  const facts = crop.indoors;
  const out = anchorOf(context, "set out");
  if (planting.start !== "seed indoors" || planting.inSince !== null || !facts || !out) return [];
  if (context.climate.underGlass) return underGlassStep(context, out.day);
  const days = Math.max(WHOLE_DAYS + NIGHTS, planting.hardenDays ?? facts.hardenDays.value);
  const floorC = facts.nightFloorC.value;
  const sown = anchorOf(context, "start");
  if (sown && isRaisedInShade(context, sown.day)) return [];
  if (!isTender(crop)) return hardySteps(context, out.day, days, floorC);
  const shared: LadderParts = {
    object: objectOf(context),
    goes: isMany(context) ? "go" : "goes",
    setOut: out.day,
    floorC,
    because: [["Counted back from setting out, ", { day: out.day }, "."]],
    basis: out.basis,
    hangsOn: anchorTaskIds(context, "set out"),
  };
  const { rungs } = ladderOf(context, { setOut: out.day, days, floorC, by: out.day });
  return rungs
    .filter(({ day }) => day < out.day)
    .flatMap((rung) => rungTasks(context, rung, shared));
}

/** Getting raised plants used to the open: hour by hour the tender, in two steps the hardy. */
export const HARDEN_OFF = definePractice({
  name: "harden off",
  past: { whole: "out for its hours of hardening off" },
  words: ["hardening", "hardening off"],
  deeds: [
    deed(
      [
        ...verb("hardened off"),
        "hardening off …",
        "(?:first|second) (?:day|morning|afternoon|hour) (?:out|outside|outdoors) for …",
        "… hardening off",
        "(?:started )?hardening (?:off )?of …",
        "hardening (?:off )?of … started",
        "hardening off … started",
        "… (?:off|out|gone) (?:to|for) hardening(?: off)?",
        "(?:set|put|took|left) … (?:out|outside) (?:for (?:an hour|two hours|a few hours|the day|the afternoon)|by day|during the day|in the day|all day)",
        "… (?:out|outside) (?:for (?:an hour|two hours|a few hours|the day|the afternoon)|by day|during the day|in day|in the day|all day)",
      ],
      { of: { begun: RAISED } },
    ),
  ],
  away: { neighbour: { help: "trays", may: ({ rhythm }) => rhythm === "timed" } },
  tasks: { rest: tasks },
});
