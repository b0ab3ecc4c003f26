import { cm, type Day, earliest, latest, litres, plus } from "../../base/index.ts";
import { type Bed, seasonOf } from "../../garden/model/index.ts";
import { killingFrost } from "../climate/frost.ts";
import { anchorKey } from "../growth/anchors.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { standsUntil } from "./care.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { caution, how, type Sentence, sign, why } from "./sentence.ts";
import { sharedTask, type TaskOf, window } from "./task.ts";

/** Compost laid on a bed in autumn [cm]. Source: common practice, an inch. */
const COMPOST_CM = 2.54;
/** Days in which a bed may be closed after the killing frost. Source: house rule; the soil is open for some weeks. */
const MAY_WAIT_DAYS = 21;

/** How much compost an inch over the bed is; nothing where the plan gives no size. */
function compostSentences({ lengthCm, widthCm }: Bed): readonly Sentence[] {
  if (!lengthCm || !widthCm) return [how("Spread ", { quantity: cm(COMPOST_CM) }, " of compost.")];
  const volume = (lengthCm.si * widthCm.si * COMPOST_CM) / 1000;
  return [how("Spread compost over it, about ", { quantity: litres(volume) }, ".")];
}

/** The last known end of what stands in the bed; the killing frost where an end is not known. Null where something stands through the winter. */
function emptyOn({ contexts, anchors }: WholeGarden, bed: Bed, frost: Day): Day | null {
  const mine = contexts.filter(({ planting }) => planting.bed === bed.key);
  const endOf = ({ planting, sowing }: SowingContext) =>
    anchors.get(anchorKey(planting.key, sowing, "end"))?.day ?? null;
  const stands = (context: SowingContext) =>
    context.crop.perennial !== null ||
    (context.crop.overwinter !== null && endOf(context) === null);
  if (mine.length === 0 || mine.some(stands)) return null;
  const ends = mine.map((context) => {
    const end = endOf(context) ?? frost;
    return latest(end, standsUntil(context) ?? end);
  });
  return latest(...ends);
}

/** Bags and tubs are emptied: their old mix feeds a bed, and is not planted again. */
const TIPPED_OUT: readonly Sentence[] = [
  how(
    "Tip the old mix out over a bed or onto the heap; what grew sick goes in the bin. Brush out what held it, and store it dry.",
  ),
  sign("The last of the crop is out."),
  why("Old mix is spent, and carries diseases into the next year."),
  caution("Wet mix is heavy: empty half with a scoop first."),
];

function closing(garden: WholeGarden, bed: Bed, frost: Day): readonly TaskOf<"close the bed">[] {
  const empty = emptyOn(garden, bed, frost);
  const { to } = seasonOf(garden.plan);
  if (empty === null || bed.kind === "greenhouse" || empty > to) return [];
  const bags = bed.kind === "bags";
  const due = earliest(latest(plus(empty, 3), plus(frost, -21)), to);
  return [
    sharedTask(garden.plan.year, bed.key, "close the bed", "1", {
      window: window(plus(empty, 1), due, plus(latest(due, frost), MAY_WAIT_DAYS)),
      harm: "when you can",
      rhythm: "session",
      minutes: bags ? 30 : 45,
      kinds: ["lifting"],
      title: { verb: bags ? "Tip out" : "Close … for winter", object: bed.name, where: null },
      say: bags
        ? TIPPED_OUT
        : [
            how("Clear what is dead; sick plants go in the bin and not on the heap."),
            ...(bed.warmed ? [how("Take the film up, and roll it away dry.")] : []),
            ...compostSentences(bed),
            how("Cover it with leaves or straw."),
            sign("Nothing you want grows in it."),
            why("Bare soil washes out over winter; fed now it is ready in spring."),
            caution(
              "Raw manure: at least 120 days before you harvest what touches soil, 90 for the rest.",
            ),
          ],
      because: [["After the last of the bed is out, about ", { day: empty }, "."]],
      basis: ["first frost"],
      needs: bags ? [] : ["compost", "leaves or straw"],
    }),
  ];
}

function tasks(garden: WholeGarden): readonly TaskOf<"close the bed">[] {
  const { firstFrost, killingFrost: own } = garden.plan.site;
  if (!firstFrost) return [];
  const frost = killingFrost(firstFrost, own);
  return garden.plan.beds.flatMap((bed) => closing(garden, bed, frost));
}

/** Each bed cleared, fed and covered once its last crop is out. */
export const CLOSE_BED = definePractice({
  name: "close the bed",
  past: { whole: "closed for winter" },
  words: ["closing", "closing the bed"],
  deeds: [
    deed(
      [
        "closed the bed(?: for (?:the )?winter)?",
        "closed|cleared … for (?:the )?winter",
        "put … to bed for (?:the )?winter",
        "… cleared for (?:the )?winter",
        "… closed for (?:the )?winter",
        ...verb("closed"),
      ],
      { about: "bed" },
    ),
  ],
  thingsFor: "closing beds",
  tasks: { shared: tasks },
});
