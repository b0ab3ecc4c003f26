import { degreesC, plus } from "../../base/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import { isReached } from "../growth/milestones.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
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

/**
 * A look for pale leaves on what was sown outdoors and has come up in cold soil. None for peas and their kin, whose roots
 * feed themselves, nor for what stands the winter, which looks no better for feeding before spring.
 */
function paleLeaves(context: SowingContext): readonly TaskOf<"feed">[] {
  const { crop, planting, climate, bed } = context;
  const up = upMilestone(context);
  if (planting.start !== "seed outdoors" || !isReached(up)) return [];
  if (crop.overwinter || crop.family === "pea family") return [];
  const [least, days, most] = PALE_DAYS;
  const due = plus(up.usual, days);
  const soil = climate.soilC(due, bed);
  if (soil >= COLD_SOIL_C) return [];
  return [
    plantingTask(context, "feed", "pale", {
      window: window(plus(up.usual, least), due, plus(up.usual, most + 4)),
      harm: "when you can",
      rhythm: "session",
      minutes: 5,
      title: { verb: "Look for pale leaves on", object: objectOf(context), where: "bed" },
      say: [
        how(
          "Where leaves are pale, water with a weak liquid feed. Where they are green, do nothing.",
        ),
        sign("The lowest leaves turn yellow, and growth stands still."),
        why("Cold soil gives roots little food. It passes as the soil warms."),
        caution("Feed: no more than the label says."),
      ],
      because: [
        ["Ten to fourteen days after it is up, in soil near ", { quantity: degreesC(soil) }, "."],
        ...upReasons(context),
      ],
      basis: combineBasis(up.basis, ["soil"]),
      needs: ["liquid feed"],
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** Food by the crop's own list, and in soil still cold a look whether what has come up wants it sooner. */
export const FEED = definePractice({
  name: "feed",
  words: ["feeding", "fertilizing", "fertilising", "side dressing", "top dressing"],
  deeds: [deed([...verb("fed|fertilized|fertilised|side-dressed|top-dressed"), "gave … a feed"])],
  thingsFor: "feeding",
  tasks: { rest: (context) => [...paleLeaves(context), ...careTasks(context, "feed")] },
});
