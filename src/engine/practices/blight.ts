import { type Day, degreesC, partsOf, plus } from "../../base/index.ts";
import { isReached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { takenUnripe } from "../growth/ripening.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { regionOf } from "../rules/regions.ts";
import { caution, how, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/**
 * Nights at least so mild [°C], two running, with hours of wet leaves on each day, are blight weather.
 * Source: from memory, unchecked: the Hutton criteria of 2017 (10 °C, six hours of air nearly full of water).
 */
const MILD_NIGHT_C = 10;
/** A mean low [°C] at which single nights are that mild. Source: house rule; nights swing two degrees and more about their mean. */
const MEAN_LOW_C = 8;
/** Less rain in a month [mm] leaves leaves too dry for it. Source: house rule; about one wet day in five. */
const DRY_MM = 25;
/** Days in its place before leaves meet and stay wet. Source: house rule; about a month. */
const LEAVES_MEET_DAYS = 30;
/** Days whose lows are taken together. Source: house rule: one mild night of this year's weather makes no summer. */
const MEAN_DAYS = 5;

/** The first day, leaves having met and fruit or tubers not yet being ripe, that is usually mild and wet enough; null where none is. */
function firstBlightDay(context: SowingContext): Day | null {
  const anchor = inPlace(context);
  const ripe = ripeMilestone(context);
  const end = isReached(ripe) ? ripe.usual : takenUnripe(context);
  if (!anchor || end === null) return null;
  const { climate, plan } = context;
  const rain = plan.site.normals?.rainMm ?? null;
  for (let day = plus(anchor.day, LEAVES_MEET_DAYS); day <= end; day = plus(day, 1)) {
    const wet = rain === null || (rain[partsOf(day).month - 1] ?? 0) >= DRY_MM;
    if (wet && meanLowC(climate, day) >= MEAN_LOW_C) return day;
  }
  return null;
}

/** The mean low [°C] of the days round one. */
function meanLowC({ air }: SowingContext["climate"], day: Day): number {
  const half = Math.floor(MEAN_DAYS / 2);
  let sum = 0;
  for (let off = -half; off <= half; off++) sum += air(plus(day, off)).lowC;
  return sum / MEAN_DAYS;
}

/** A beetle that has to be reported where it does not live yet. Source: from memory, unchecked: plant health law of the United Kingdom, Ireland, Finland and Sweden. */
const BEETLE =
  "A striped yellow and black beetle on potatoes must be reported: don't crush it or carry it about.";

/** From when mild, wet days bring late blight, once a season, for what it takes; none under glass, where leaves stay dry. */
export function blightWatch(context: SowingContext): readonly TaskOf<"scout">[] {
  const { crop, climate, sowing, plan } = context;
  if (!crop.lateBlight || climate.underGlass || sowing > 1) return [];
  const day = firstBlightDay(context);
  if (day === null) return [];
  const object = objectOf(context);
  const roots = crop.eaten === "root";
  const region = regionOf(plan.site);
  const reported = roots && (region === "british isles" || region === "nordic countries");
  return [
    plantingTask(context, "scout", "blight", {
      window: window(plus(day, -3), day, plus(day, 14)),
      harm: "this week",
      rhythm: "session",
      minutes: 10,
      title: { verb: "Watch for blight on", object, where: "bed" },
      say: [
        how(
          "From now on look the leaves over after mild, wet days. Cut brown-blotched ones out and bin them. ",
          roots
            ? "Once stems go brown, cut all tops down, and dig two weeks later."
            : "Once stems go brown, pick what is sound and take the plants out.",
        ),
        sign(
          "Two days running with nights above ",
          { quantity: degreesC(MILD_NIGHT_C) },
          " and leaves wet for six hours or more.",
        ),
        why("In such weather blight takes a whole row within a week or two."),
        caution(`Keep blighted ${object} off the compost heap.`),
        ...(reported ? [caution(BEETLE)] : []),
      ],
      because: [
        [
          "Mean lows reach ",
          { quantity: degreesC(MEAN_LOW_C) },
          " about ",
          { day },
          ", in a month with rain.",
        ],
      ],
      basis: [...(inPlace(context)?.basis ?? []), "time of year"],
      hangsOn: anchorTaskIds(context, "start", "set out"),
    }),
  ];
}
