import { plus } from "../../base/days/day.ts";
import { inches, litres } from "../../base/quantities/quantity.ts";
import { allGrounds } from "../growth/anchors.ts";
import { type Bags, bagLifts, type Lift, mixForBags } from "../growth/filling.ts";
import { anchorOf, type Growing } from "../growth/growing.ts";
import { tallOn } from "../growth/height.ts";
import { middle } from "../growth/milestones.ts";
import type { Practice } from "./practice.ts";
import { caution, how, lengths, type Piece, type Sentence, sign, why } from "./say.ts";
import { objectOf, plantingTask, stepBefore, type Task, tasksBehind, window } from "./task.ts";

const INCH = 2.54;
/** A row is hilled so often, each time by the same part of the whole. Source: common practice. */
const ROW_TIMES = 2;
/** Days that shoots may wait before they flop or tubers green. Source: house rule. */
const MAY_WAIT_DAYS = 5;

/** What tubers are planted in: mix below and cover above, the middle of each range, to the whole inch [cm]. */
export function bagStartCm(growing: Growing): number {
  const { hilling } = growing.crop;
  if (!hilling) return 0;
  const inch = (range: readonly [number, number]) => Math.round((range[0] + range[1]) / 2 / INCH);
  return (inch(hilling.bagStartCm.value) + inch(hilling.bagCoverCm.value)) * INCH;
}

/** How far under the rim a bag is filled, to the whole inch [cm]; 0 for what is not hilled. */
function bagRimCm({ crop }: Growing): number {
  return Math.round((crop.hilling?.bagRimCm.value[0] ?? 0) / INCH) * INCH;
}

/** The bags it grows in, in centimetres; null in the ground. */
function bagsOf({ bed }: Growing): Bags | null {
  const bags = bed?.bags;
  return bags ? { count: bags.count, acrossCm: bags.across.si, highCm: bags.high.si } : null;
}

/** All the mix its bags take, from what tubers are planted in to the last lift [L]; null in the ground and for what is not hilled. */
export function mixInAllLitres(growing: Growing): number | null {
  const bags = bagsOf(growing);
  if (!bags || !growing.crop.hilling) return null;
  return mixForBags(bags, bagStartCm(growing), bagRimCm(growing));
}

function howMuch(growing: Growing, lifts: readonly Lift[], index: number): Sentence {
  const { bed, crop } = growing;
  const lift = lifts[index];
  if (!lift || !bed?.bags) {
    const [least, most] = crop.hilling?.rowTotalCm.value ?? [15, 20];
    return how(
      "Draw up ",
      lengths([least / ROW_TIMES, most / ROW_TIMES]),
      " of loose soil along the row, from both sides.",
    );
  }
  const each: Piece[] = [{ quantity: litres(lift.litresABag) }, " a bag"];
  const all: Piece[] =
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

function tasks(growing: Growing): readonly Task[] {
  const { crop, bed } = growing;
  const facts = crop.hilling;
  const start = anchorOf(growing, "start");
  if (!facts || !start) return [];
  const seen = anchorOf(growing, "up");
  const bags = bagsOf(growing);
  const lifts = bags ? bagLifts(bags, bagStartCm(growing), bagRimCm(growing)) : [];
  const times = bed?.bags ? lifts.length : ROW_TIMES;
  const upDays = crop.comesUp.kind === "days" ? middle(crop.comesUp.days.value) : 0;
  const firstDays = middle(facts.firstDaysAfterPlanting.value);
  const tall = tallOn(growing, middle(facts.shootCm.value));
  const first = tall ?? (seen ? plus(seen.day, firstDays - upDays) : plus(start.day, firstDays));
  const between = middle(facts.daysBetween.value);
  return Array.from({ length: times }, (_, i) => {
    const due = plus(first, i * between);
    const last = i === times - 1;
    return plantingTask(growing, "hill", String(i + 1), {
      window: window(plus(due, -5), due, plus(due, MAY_WAIT_DAYS)),
      harm: "this week",
      rhythm: "session",
      minutes: 10 + 5 * (bed?.bags?.count ?? 2),
      kinds: ["lifting"],
      title: { verb: i === 0 ? "Hill" : "Hill again:", object: objectOf(growing), where: "bed" },
      say: [
        howMuch(growing, lifts, i),
        how(
          "Leave ",
          lengths(facts.topsLeftCm.value),
          " of tops in the light",
          ...(bed?.bags && last
            ? [", and stop ", lengths(facts.bagRimCm.value), " under the rim."]
            : ["."]),
        ),
        sign("Shoots stand ", lengths(facts.shootCm.value), " clear of the soil."),
        why(seen ? "Shoots came on " : "Planted ", { day: seen?.day ?? start.day }, "."),
        ...(i === 0 ? [how("Before a frost night, bury the shoots whole.")] : []),
        ...(bed?.bags && i === 0 ? [caution("Wet bags are heavy: lift with two.")] : []),
      ],
      because: () => [
        [
          i === 0
            ? `Counted ${seen ? firstDays - upDays : firstDays} days from ${seen ? "when shoots came" : "planting"}, `
            : `Counted ${between} days from the hilling before, from a first one after `,
          { day: seen?.day ?? start.day },
          ".",
        ],
      ],
      grounds: seen || tall !== null ? ["seen"] : allGrounds(start.grounds, ["age"]),
      needs: bed?.bags ? ["bagged mix", "a bucket"] : ["a hoe"],
      hangsOn: tasksBehind(growing, "start"),
      after: stepBefore(growing, "hill", i === 0 ? undefined : String(i)),
    });
  });
}

/** Earthing up, or filling bags lift by lift, as shoots grow. */
export const HILL: Practice = { name: "hill", pass: "rest", tasks };
