import { capital, joinWords, plus } from "../../base/index.ts";
import { isRaised } from "../../garden/model/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { growsOnFrom } from "../growth/through-winter.ts";
import { careTasks } from "./care.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { how, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Days after it is sown or set out by which what it climbs stands: later its roots are hurt. Source: house rule. */
const BY_DAYS = 7;

function supports(context: SowingContext): readonly TaskOf<"stake and train">[] {
  const { support } = context.crop;
  const anchor = support && inPlace(context);
  const { start, inSince } = context.planting;
  const grown = growsOnFrom(context);
  const old = inSince !== null && grown === null;
  if (!support || !anchor || context.sowing > 1 || old || isRaised(start)) return [];
  const day = grown ?? anchor.day;
  return [
    plantingTask(context, "stake and train", "support", {
      window: window(day, day, plus(day, BY_DAYS), "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Put up sticks for", object: objectOf(context), where: "bed" },
      say: [
        how(`${capital(joinWords(support.things))}. ${support.how}`),
        why("Put up later, it goes through grown roots and after fallen plants."),
      ],
      because: [
        [
          grown === null ? "On the day it goes in, " : "As it grows on after the winter, ",
          { day },
          ".",
        ],
      ],
      basis: grown === null ? anchor.basis : combineBasis(anchor.basis, ["last frost"]),
      needs: support.things,
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** What a crop climbs, put up on the day it is sown, and its tying in; where plants go in, putting it up belongs to setting out. */
export const STAKE_AND_TRAIN = definePractice({
  name: "stake and train",
  past: { whole: "tied in", support: "given its supports" },
  words: [
    "stake",
    "stakes",
    "staking",
    "training",
    "tying",
    "tying in",
    "tying up",
    "staking and training",
    "trellising",
    "support",
    "supports",
  ],
  deeds: [
    deed(
      [
        "put (?:up )?(?:the )?(?:supports|stakes|canes|poles|trellis|netting)(?: up)? for …",
        "… supported",
        "(?:supports|stakes|canes|poles|trellis|netting|sticks|wigwam|twigs|cages) (?:up |in |out )?for …",
        "… (?:supports|stakes|canes|poles|trellis|netting|sticks|wigwam|cages) (?:are )?(?:up|in)",
      ],
      {
        step: "support",
      },
    ),
    deed([
      ...verb("staked|caged|trellised|propped(?: up)?"),
      ...verb("tied(?: in| up| back)?|trained|led up"),
      "… tied to (?:the |their |a )?(?:fence|canes|cane|stakes|stake|poles|strings|string|wires|wire|trellis|frame)",
      "(?:pinched|nipped|took|rubbed|snapped) (?:out |off )?(?:the )?(?:side shoots|sideshoots|side-shoots|laterals|suckers) (?:out of|off|off of|on|from|of|out on) …",
      "(?:side shoots|sideshoots|laterals|suckers) off …",
      "… (?:side shoots|sideshoots|laterals|suckers) (?:out|off|removed|pinched out)",
      "(?:ran|put) (?:a |some )?(?:string|strings|twine) (?:round|around|along) …",
      "tied … (?:in|up|to the fence|to canes|to the canes|to stakes|to the wires)",
    ]),
  ],
  tasks: { rest: (context) => [...supports(context), ...careTasks(context, "stake and train")] },
});
