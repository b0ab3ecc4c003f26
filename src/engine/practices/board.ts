import { type Day, earliest, latest, plus } from "../../base/index.ts";
import type { PlantingCondition } from "../../garden/model/index.ts";
import { isReached } from "../growth/milestones.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
import { deed, verb } from "./deeds.ts";
import { upReasons } from "./growth-reasons.ts";
import { definePractice } from "./practice.ts";
import { householdOnly, how, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** A board is off by this day after sowing, whatever shows. Source: extension advice on carrots, from memory: 7 to 14, up to 21 days. */
export const BOARD_OFF_BY_DAYS = 21;
/** Nothing is up under a board before this day after sowing. Source: as above, looked at from day 5 on. */
const FIRST_LOOK_DAYS = 5;

/** Whether somebody can look every day from one day to another, both inclusive. */
function isSomebodyAround(context: SowingContext, from: Day, to: Day): boolean {
  for (let day = from; day <= to; day = plus(day, 1)) if (!context.around(day)) return false;
  return true;
}

/** The last day before `day`, or that day, on which somebody is about; `day` itself where nobody is for three weeks. */
function lastAround(context: SowingContext, day: Day): Day {
  for (let back = 0; back < BOARD_OFF_BY_DAYS; back++)
    if (context.around(plus(day, -back))) return plus(day, -back);
  return day;
}

/** The board off by its last day, where the soil is too cold to say when anything will show. */
function takeOffUnseen(context: SowingContext, stop: Day): TaskOf<"board"> {
  const day = lastAround(context, stop);
  return plantingTask(context, "board", "off", {
    window: window(plus(stop, -FIRST_LOOK_DAYS), day, day, "earlier"),
    harm: "tonight",
    rhythm: "daily",
    minutes: 5,
    title: { verb: "Board off", object: objectOf(context), where: "bed" },
    say: [
      how("Take the board away for good, green or not, and keep the row damp."),
      why("Three weeks under a board is the most that seedlings stand."),
    ],
    because: [["Off by day 21 whatever shows, ", { day: stop }, "."]],
    basis: anchorOf(context, "start")?.basis ?? [],
    hangsOn: anchorTaskIds(context, "start"),
  });
}

/** The board off on the day that green was seen, whenever it was to be expected. */
function takeOffGreen(context: SowingContext, start: Day, seen: Day): TaskOf<"board"> {
  return plantingTask(context, "board", "off", {
    window: window(seen, seen, seen),
    harm: "tonight",
    rhythm: "daily",
    minutes: 5,
    title: { verb: "Board off", object: objectOf(context), where: "bed" },
    say: [
      how("Take the board away for good this evening, then keep the row damp."),
      why("Green was seen on ", { day: seen }, "."),
    ],
    because: [
      ["Sown ", { day: start }, ", up on ", { day: seen }, "; off that evening."],
      ...upReasons(context),
    ],
    basis: ["seen"],
    hangsOn: anchorTaskIds(context, "start"),
  });
}

function tasks(context: SowingContext): readonly TaskOf<"board">[] {
  const start = anchorOf(context, "start");
  const up = upMilestone(context);
  if (!context.planting.under.includes("board") || !start) return [];
  const stop = plus(start.day, BOARD_OFF_BY_DAYS);
  if (!isReached(up)) return [takeOffUnseen(context, stop)];
  if (up.seen) return [takeOffGreen(context, start.day, up.usual)];
  const look = earliest(latest(up.early, plus(start.day, FIRST_LOOK_DAYS)), plus(stop, -2));
  const off = earliest(up.usual, stop);
  const canLook = isSomebodyAround(context, look, off);
  const shared = {
    harm: "tonight",
    rhythm: "daily",
    basis: up.basis,
    hangsOn: anchorTaskIds(context, "start"),
    because: [
      [
        "Sown ",
        { day: start.day },
        ", likely up about ",
        { day: up.usual },
        "; off by day 21 whatever shows, ",
        { day: stop },
        ".",
      ],
      ...upReasons(context),
    ],
  } as const;
  const object = objectOf(context);
  const offDay = canLook ? off : lastAround(context, look);
  const taking = plantingTask(context, "board", "off", {
    ...shared,
    window: window(canLook ? look : plus(start.day, 1), offDay, canLook ? stop : offDay, "earlier"),
    minutes: 5,
    title: { verb: "Board off", object, where: "bed" },
    say: canLook
      ? [
          how(
            "Take the board away for good the evening you see the first green, then keep the row damp.",
          ),
          sign("The first bent green threads show, even a few."),
          why("Sown ", { day: start.day }, ", so green is likely now."),
        ]
      : [
          how("Take the board off now and keep the row damp each day it is dry."),
          householdOnly(why("Nobody can look under it every evening.")),
          why("Left on over green seedlings for a day, it kills the row."),
        ],
  });
  if (!canLook) return [taking];
  return [
    plantingTask(context, "board", "look", {
      ...shared,
      window: window(plus(look, -1), look, look, "earlier"),
      minutes: 5,
      title: { verb: "Look under board:", object, where: "bed" },
      say: [
        how("From tonight lift an edge each evening, and water if the soil is dry."),
        sign("Any green at all means off tonight."),
        why("Sown ", { day: start.day }, "; this is the first likely day."),
      ],
    }),
    taking,
  ];
}

const UNDER_ONE: PlantingCondition = { under: "board" };

/** A board over slow seed: looked under each evening from the first likely day, off at first green. */
export const BOARD = definePractice({
  name: "board",
  past: {
    whole: "looked at under its board",
    off: "out from under its board",
    on: "under its board",
  },
  words: ["boards", "boarding", "a board", "the board"],
  deeds: [
    deed(
      [
        "(?:the )?boards? (?:off|up from|away from) …",
        ...verb("took (?:the )?boards? off", "(?:took )?(?:the )?boards? off"),
        "(?:took )?(?:the )?boards? off",
      ],
      { step: "off", of: UNDER_ONE },
    ),
    deed(["(?:put )?(?:the |a )?boards? (?:on|over) …", "… boards? on", "boards? on"], {
      step: "on",
      of: UNDER_ONE,
    }),
  ],
  answers: { up: "I see green" },
  away: { neighbour: { help: "boards", may: () => true }, rather: "early" },
  tasks: { rest: tasks },
});
