import { type Day, earliest, latest, plus } from "../../base/index.ts";
import { combineBasis } from "./anchors.ts";
import { UP_AFTER_DAYS } from "./diary-anchors.ts";
import { dailyShare, GIVE_UP_DAYS, type Seed, shareIn, upOn } from "./emergence.ts";
import { memoizeBySowing, type OfSowing } from "./memo.ts";
import { type Milestone, middle, seenMilestone } from "./milestones.ts";
import { postponed } from "./postponed.ts";
import { warmerK } from "./seasons.ts";
import { anchorOf, type SowingContext } from "./sowing-context.ts";

/** The least spread of emergence on either side [days]. Source: house rule. */
const LEAST_SPREAD_DAYS = 3;

/** The depth of seed where the facts give none [cm]. Source: the half inch of the days table. */
const TABLE_DEPTH_CM = 1.27;

/** When the sowing, tuber or clove is up, from the day it went in; a sighting replaces it. */
export const upMilestone: OfSowing<Milestone> = memoizeBySowing(["start", "up"], (context) =>
  postponed(context, "up", upOf(context)),
);

function upOf(context: SowingContext): Milestone {
  const seen = anchorOf(context, "up");
  const start = anchorOf(context, "start");
  // Green from before the row went in, by the diary too, was of what stood there before.
  const ofBefore = seen && start?.from === "diary" && seen.day <= start.day;
  if (seen && !ofBefore) return seenMilestone(seen.day);
  if (!start) return { none: "it is not in yet" };
  const { comesUp, indoors } = context.crop;
  if (comesUp.kind === "days") {
    const [least, most] = comesUp.days.value;
    const on = (days: number) => fromTuber(context, start.day, { days, warmerK: 0 });
    const basis = combineBasis(start.basis, comesUp.inSoilC ? ["soil", "age"] : ["age"]);
    const usual = on(middle(comesUp.days.value));
    return { early: on(least), usual, late: on(most), basis, seen: false };
  }
  const warm = context.planting.start === "seed indoors" && indoors !== null;
  const days = warm ? upIndoors(context, start.day) : upOutdoors(context, start.day);
  if (days === null) return { none: "the soil is too cold for it to come up" };
  const basis = combineBasis(start.basis, warm ? ["age"] : ["soil", "age"]);
  return { ...days, basis, seen: false };
}

/** Soil in which shoots of tubers stand still [°C]. Source: common practice, 40 °F. */
const SHOOTS_STOP_C = 4.4;

/** The day that a tuber's shoot is up after so many days in the soil that its figure is for; later in colder, but for bags, which the sun warms. */
function fromTuber(
  { climate, bed, crop }: SowingContext,
  from: Day,
  { days, warmerK }: { readonly days: number; readonly warmerK: number },
): Day {
  const inSoilC = crop.comesUp.kind === "days" ? crop.comesUp.inSoilC?.value : undefined;
  if (inSoilC === undefined || bed?.bags) return plus(from, days);
  let grown = 0;
  for (let day = from; day < from + GIVE_UP_DAYS; day = plus(day, 1)) {
    const warmth = climate.soilC(day, bed, warmerK) - SHOOTS_STOP_C;
    grown += Math.max(0, Math.min(1, warmth / (inSoilC - SHOOTS_STOP_C)));
    if (grown >= days - 1e-9) return plus(day, 1);
  }
  return plus(from, GIVE_UP_DAYS);
}

type DaySpread = { readonly early: Day; readonly usual: Day; readonly late: Day };

/** Indoors it is as warm as its crop needs, whatever the season. */
function upIndoors({ crop }: SowingContext, sown: Day): DaySpread | null {
  const { comesUp, indoors } = crop;
  if (comesUp.kind !== "table" || !indoors) return null;
  const share = dailyShare(comesUp.row, indoors.soilTempC.value);
  const usual = upOn(sown, () => share);
  return usual === null ? null : withLeastSpread(sown, { early: usual, usual, late: usual });
}

/**
 * The day a seed sown outdoors on a day is up in a season that much warmer than usual [K], or null; nothing else known
 * of the planting counts.
 */
export function upFrom(context: SowingContext, sown: Day, warmerK = 0): Day | null {
  const { comesUp } = context.crop;
  if (comesUp.kind === "days")
    return fromTuber(context, sown, { days: middle(comesUp.days.value), warmerK });
  return upOn(sown, shareIn(context.climate, seedOf(context, comesUp.row, warmerK)));
}

/** The last day on which what is up on a day can have been sown, as it usually comes up; at least three days before. */
export function sownFor(context: SowingContext, up: Day): Day {
  const { planting, crop } = context;
  const warm = planting.start === "seed indoors" && crop.indoors !== null;
  const upOf = (sown: Day) =>
    warm ? (upIndoors(context, sown)?.usual ?? null) : upFrom(context, sown);
  for (let back = UP_AFTER_DAYS; back < GIVE_UP_DAYS; back++) {
    const by = upOf(plus(up, -back));
    if (by !== null && by <= up) return plus(up, -back);
  }
  return plus(up, -UP_AFTER_DAYS);
}

/**
 * The same in a warm, the usual and a cold season, with a spread of at least LEAST_SPREAD_DAYS; null where it never
 * comes up in the usual one.
 */
export function upOutdoors(context: SowingContext, sown: Day): DaySpread | null {
  const { climate, crop } = context;
  if (crop.comesUp.kind !== "table") return null;
  const { row } = crop.comesUp;
  const run = (shiftK: number) => upOn(sown, shareIn(climate, seedOf(context, row, shiftK)));
  const usual = run(0);
  if (usual === null) return null;
  const early = run(warmerK(climate, "warm", sown, usual - sown));
  const late = run(warmerK(climate, "cold", sown, usual - sown));
  return withLeastSpread(sown, {
    early: early ?? usual,
    usual,
    late: late ?? plus(sown, GIVE_UP_DAYS),
  });
}

/** A seed of the planting in its bed. */
export function seedOf({ bed, crop }: SowingContext, row: string, shiftK: number): Seed {
  const depth = crop.outdoors?.depthCm.value;
  const depthCm = depth ? (depth[0] + depth[1]) / 2 : TABLE_DEPTH_CM;
  return { row, bed, depthCm, warmerK: shiftK };
}

function withLeastSpread(sown: Day, { early, usual, late }: DaySpread): DaySpread {
  return {
    early: latest(earliest(early, plus(usual, -LEAST_SPREAD_DAYS)), plus(sown, 1)),
    usual,
    late: latest(late, plus(usual, LEAST_SPREAD_DAYS)),
  };
}
