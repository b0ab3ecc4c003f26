import { degreesC, plus } from "../../base/index.ts";
import type { Crop, NumberRange } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { groundFreezes } from "../climate/winter-cold.ts";
import { combineBasis } from "../growth/anchors.ts";
import { isReached } from "../growth/milestones.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { growsOnFrom } from "../growth/through-winter.ts";
import { upMilestone } from "../growth/up.ts";
import { afterWinter } from "../growth/winter.ts";
import { careTasks } from "./care.ts";
import { deed, verb } from "./deeds.ts";
import { upReasons } from "./growth-reasons.ts";
import { definePractice } from "./practice.ts";
import { caution, how, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Days after it is up by which what was in the seed is used up. Source: common practice, ten to fourteen days. */
const PALE_DAYS = [10, 12, 14] as const;

/** Soil in which roots find little food, however much there is [°C]. Source: common practice, 50 °F. */
const COLD_SOIL_C = 10;

/** Crops whose first weeks are slow in cold soil and that hunger for nitrogen then; told by the soil they come up in. Source: common practice. */
const isHungryEarly = ({ family }: Crop) => family === "pea family" || family === "grass family";

/** What is done where leaves are pale: peas and their kin feed themselves as soon as the soil is warm, and are helped over it once. */
const paleSay = ({ family }: Crop) =>
  family === "pea family"
    ? [
        how(
          "Where leaves are pale, water once with a weak liquid feed, and no more: fed twice, leaves grow and no pods. Where they are green, do nothing.",
        ),
        sign("The lowest leaves turn yellow, and growth stands still."),
        why(
          "Roots feed themselves only once the soil is near ",
          { quantity: degreesC(COLD_SOIL_C) },
          ".",
        ),
      ]
    : [
        how(
          "Where leaves are pale, water with a weak liquid feed. Where they are green, do nothing.",
        ),
        sign("The lowest leaves turn yellow, and growth stands still."),
        why("Cold soil gives roots little food. It passes as the soil warms."),
      ];

/**
 * A look for pale leaves on what was sown outdoors and has come up in cold soil. None for what stands the winter, which
 * looks no better for feeding before spring.
 */
function paleLeaves(context: SowingContext): readonly TaskOf<"feed">[] {
  const { crop, planting, climate, bed } = context;
  const up = upMilestone(context);
  const young = growsOnFrom(context) !== null;
  if (planting.start !== "seed outdoors" || !isReached(up) || crop.overwinter || young) return [];
  const [least, days, most] = PALE_DAYS;
  const due = plus(up.usual, days);
  const soil = climate.soilC(isHungryEarly(crop) ? up.usual : due, bed);
  if (soil >= COLD_SOIL_C) return [];
  return [
    plantingTask(context, "feed", "pale", {
      window: window(plus(up.usual, least), due, plus(up.usual, most + 4)),
      harm: "when you can",
      rhythm: "session",
      minutes: 5,
      title: { verb: "Look … over for pale leaves", object: objectOf(context), where: "bed" },
      say: [...paleSay(crop), caution("Feed: no more than the label says.")],
      because: [
        [
          "Ten to fourteen days after it comes up, in soil near ",
          { quantity: degreesC(soil) },
          ".",
        ],
        ...upReasons(context),
      ],
      basis: combineBasis(up.basis, ["soil"]),
      needs: ["liquid feed"],
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** Days from the last frost in which what stood the winter is fed: where it froze hard, and where it did not. Source: common practice, as leaves grow again. */
const SPRING_DAYS = { frozen: [-14, 7], mild: [-56, -28] } as const satisfies Record<
  string,
  NumberRange
>;

/** Days after which it has rooted and can use a feed. Source: house rule; two months. */
const ROOTED_DAYS = 60;

/** The one feed of garlic and whatever else is set in autumn, as it begins to grow in spring. */
function springFeed(context: SowingContext): readonly TaskOf<"feed">[] {
  const start = anchorOf(context, "start");
  if (!context.crop.overwinter || !start || context.sowing > 1) return [];
  const frozen = groundFreezes(context.climate, seasonOf(context.plan));
  const when = afterWinter(context, start.day, frozen ? SPRING_DAYS.frozen : SPRING_DAYS.mild);
  if (!isReached(when) || when.usual < plus(start.day, ROOTED_DAYS)) return [];
  return [
    plantingTask(context, "feed", "spring", {
      window: window(when.early, when.usual, when.late),
      harm: "when you can",
      rhythm: "session",
      minutes: 15,
      title: { verb: "Feed", object: objectOf(context), where: "bed" },
      say: [
        how(
          "Scatter compost or plant food between the rows and water it in. Again three weeks on if leaves are pale, and never after that.",
        ),
        sign("New leaves are a hand long and grow by the day."),
        why("Leaves made now fill the bulbs; fed late, it makes leaves instead of bulbs."),
        caution("Plant food: as much as the label says, no more."),
      ],
      because: [["Counted from the usual last frost of the spring it stands in."]],
      basis: when.basis,
      needs: ["compost or plant food"],
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** In bags and tubs food lies on the mix, for there is no row to draw soil over. */
function inBags(context: SowingContext, task: TaskOf<"feed">): TaskOf<"feed"> {
  if (context.bed?.kind !== "bags" || task.step === "pale") return task;
  return {
    ...task,
    title: { ...task.title, verb: "Top-dress" },
    say: [
      how("Strew a handful of compost or feed over the mix, off the stems, and water it in."),
      ...task.say.filter(({ part }) => part !== "how"),
    ],
  };
}

/** Food by the crop's own list, and in soil still cold a look whether what has come up wants it sooner. */
export const FEED = definePractice({
  name: "feed",
  past: { whole: "fed" },
  words: ["feeding", "fertilizing", "fertilising", "side dressing", "top dressing"],
  deeds: [
    deed([
      ...verb(
        "fed|fertilized|fertilised|side-dressed|side dressed|top-dressed|top dressed|manured|mucked",
      ),
      "gave … (?:a |the |their |its |some )?(?:liquid |tomato |first |weekly )?(?:feed|seaweed|comfrey|nettle tea|nettle water|comfrey tea|fish|blood and bone|fertilizer|fertiliser)",
      "(?:a )?(?:tomato |liquid )?feed (?:of seaweed |of comfrey |of nettle |of fish )?(?:on|for|to) …",
    ]),
  ],
  thingsFor: "feeding",
  tasks: {
    rest: (context) =>
      [...paleLeaves(context), ...springFeed(context), ...careTasks(context, "feed")].map((task) =>
        inBags(context, task),
      ),
  },
});
