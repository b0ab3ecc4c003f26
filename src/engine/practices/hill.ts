import { inches, litres, plus } from "../../base/index.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { combineBasis } from "../growth/anchors.ts";
import { type Bags, bagLifts, type Lift, mixForBags } from "../growth/filling.ts";
import { dayAtHeight } from "../growth/height.ts";
import { isReached, middle } from "../growth/milestones.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { caution, how, lengthRange, type Sentence, sign, type TextPiece, why } from "./sentence.ts";
import {
  anchorTaskIds,
  objectOf,
  plantingTask,
  type TaskOf,
  taskIdBefore,
  window,
} from "./task.ts";

const INCH = 2.54;
/** A row is hilled so often, each time by the same part of the whole. Source: common practice. */
const ROW_TIMES = 2;
/** Days that shoots may wait before they flop or tubers green. Source: house rule. */
const MAY_WAIT_DAYS = 5;

/** What tubers are planted in: mix below and cover above, the middle of each range, to the whole inch [cm]. */
export function bagStartCm(context: SowingContext): number {
  const { hilling } = context.crop;
  if (!hilling) return 0;
  const inch = (range: readonly [number, number]) => Math.round((range[0] + range[1]) / 2 / INCH);
  return (inch(hilling.bagStartCm.value) + inch(hilling.bagCoverCm.value)) * INCH;
}

/** How far under the rim a bag is filled, to the whole inch [cm]; 0 for what is not hilled. */
function bagRimCm({ crop }: SowingContext): number {
  return Math.round((crop.hilling?.bagRimCm.value[0] ?? 0) / INCH) * INCH;
}

/** The bags it grows in, in centimetres; null in the ground. */
function bagsOf({ bed }: SowingContext): Bags | null {
  const bags = bed?.bags;
  return bags ? { count: bags.count, acrossCm: bags.across.si, highCm: bags.high.si } : null;
}

/** All the mix its bags take, from what tubers are planted in to the last lift [L]; null in the ground and for what is not hilled. */
export function mixInAllLitres(context: SowingContext): number | null {
  const bags = bagsOf(context);
  if (!bags || !context.crop.hilling) return null;
  return mixForBags(bags, bagStartCm(context), bagRimCm(context));
}

function howMuch(context: SowingContext, lifts: readonly Lift[], index: number): Sentence {
  const { bed, crop } = context;
  const lift = lifts[index];
  if (!lift || !bed?.bags) {
    const [least, most] = crop.hilling?.rowTotalCm.value ?? [15, 20];
    return how(
      "Draw up ",
      lengthRange([least / ROW_TIMES, most / ROW_TIMES]),
      " of loose soil along the row, from both sides.",
    );
  }
  const each: TextPiece[] = [{ quantity: litres(lift.litresABag) }, " each"];
  const all: TextPiece[] =
    bed.bags.count > 1
      ? [", ", { quantity: litres(lift.litresAll) }, ` for all ${bed.bags.count}`]
      : [];
  return how(
    "Add ",
    { quantity: inches(lift.inches) },
    " of mix round the shoots: about ",
    ...each,
    ...all,
    ".",
  );
}

function tasks(context: SowingContext): readonly TaskOf<"hill">[] {
  const { crop, bed } = context;
  const facts = crop.hilling;
  const start = anchorOf(context, "start");
  if (!facts || !start) return [];
  const seen = anchorOf(context, "up");
  const bags = bagsOf(context);
  const lifts = bags ? bagLifts(bags, bagStartCm(context), bagRimCm(context)) : [];
  const times = bed?.bags ? lifts.length : ROW_TIMES;
  const upDays = crop.comesUp.kind === "days" ? middle(crop.comesUp.days.value) : 0;
  const firstDays = middle(facts.firstDaysAfterPlanting.value);
  const tall = dayAtHeight(context, middle(facts.shootCm.value));
  const up = upMilestone(context);
  const shoots = isReached(up) ? up.usual : plus(start.day, upDays);
  const first = tall ?? plus(seen?.day ?? shoots, firstDays - upDays);
  const between = middle(facts.daysBetween.value);
  return Array.from({ length: times }, (_, i) => {
    const due = plus(first, i * between);
    const last = i === times - 1;
    return plantingTask(context, "hill", String(i + 1), {
      window: window(plus(due, -5), due, plus(due, MAY_WAIT_DAYS)),
      harm: "this week",
      rhythm: "session",
      minutes: 10 + 5 * (bed?.bags?.count ?? 2),
      kinds: ["lifting"],
      title: { verb: i === 0 ? "Hill" : "Hill … again", object: objectOf(context), where: "bed" },
      say: [
        howMuch(context, lifts, i),
        how(
          "Leave ",
          lengthRange(facts.topsLeftCm.value),
          " of tops in the light",
          ...(bed?.bags && last
            ? [", and stop ", lengthRange(facts.bagRimCm.value), " under the rim."]
            : ["."]),
        ),
        sign("Shoots stand ", lengthRange(facts.shootCm.value), " clear of the soil."),
        why(seen ? "Shoots came on " : "Planted ", { day: seen?.day ?? start.day }, "."),
        ...(i === 0 && frostsAt(context.plan.site, bed).lastFrost
          ? [how("Before a frost night, bury the shoots whole.")]
          : []),
        ...(bed?.bags && i === 0 ? [caution("Wet mix is heavy: lift with two.")] : []),
      ],
      because: [
        [
          i === 0
            ? `Counted ${bags && !seen ? firstDays : firstDays - upDays} days from ${seen ? "when shoots came" : bags ? "planting" : "when shoots should come"}, `
            : `Counted ${between} days from the hilling before, from a first one after `,
          { day: seen?.day ?? (bags ? start.day : shoots) },
          ".",
        ],
      ],
      basis: seen || tall !== null ? ["seen"] : combineBasis(start.basis, ["age"]),
      needs: bed?.bags ? ["bagged mix", "a bucket"] : ["a hoe"],
      hangsOn: anchorTaskIds(context, "start"),
      after: taskIdBefore(context, "hill", i === 0 ? undefined : String(i)),
    });
  });
}

/** Earthing up, or filling bags lift by lift, as shoots grow. */
export const HILL = definePractice({
  name: "hill",
  past: { whole: "hilled" },
  words: ["hilling", "hilling up", "earthing", "earthing up", "earth up"],
  deeds: [
    deed([
      ...verb("hilled(?: up)?|earthed up|ridged(?: up)?"),
      "earthed|hilled … up",
      "topped up (?:the )?(?:soil|compost|mix|earth) (?:round|around|on|over) …",
    ]),
  ],
  answers: { done: "Hilled today", notYet: "Not tall enough yet" },
  thingsFor: "hilling",
  tasks: { rest: tasks },
});
