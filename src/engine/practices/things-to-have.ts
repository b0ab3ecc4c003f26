import { earliest, plus, theDay } from "../../base/days/day.ts";
import type { Start } from "../../crops/facts.ts";
import { seasonOf } from "../../garden/model/season.ts";
import { spacingCm } from "../../garden/plan/room.ts";
import { bulbsFor, layoutOf, plantsOf, rowCm, saidCount, seedsFor } from "../growth/amounts.ts";
import type { Anchor } from "../growth/anchors.ts";
import { anchorOf, type Growing } from "../growth/growing.ts";
import { ripening } from "../growth/ripening.ts";
import { pieceCm } from "../growth/successions.ts";
import type { Practice } from "./practice.ts";
import { sowingsOf } from "./repeat.ts";
import { caution, how, type Sentence, why } from "./say.ts";
import { soak } from "./soak.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Weeks that tubers stand in the light to sprout before they are planted. Source: common practice. */
const SPROUT_DAYS = 28;
/** Seed garlic is ordered so long before it is planted, since it sells out. Source: common practice. */
const CLOVES_AHEAD_DAYS = 60;

const BOUGHT = {
  "seed indoors": "seed",
  "seed outdoors": "seed",
  "winter-sown": "seed",
  tubers: "seed tubers",
  sets: "sets",
  crowns: "crowns",
  cloves: "bulbs",
  plants: "",
} as const;

/** The same as the job that wants it names it. */
const NEEDED: Readonly<Record<Start, string>> = {
  ...BOUGHT,
  tubers: "tubers",
  cloves: "seed garlic",
};

/** The planting with its variety, and with its crop where its own name does not tell it, as one orders it. */
function named(growing: Growing): string {
  const { crop, planting } = growing;
  const object = objectOf(growing);
  const told = [crop.one, crop.many, planting.written].some((word) => object.includes(word));
  const more = [told ? null : crop.one, planting.variety].filter((word) => word !== null);
  return more.length === 0 ? object : `${object} (${more.join(", ")})`;
}

/** Seeds for all sowings of a planting and how many those are; null where the plan does not say how much it grows. */
function seedsOfAll(growing: Growing, start: Anchor): { seeds: number; times: number } | null {
  const { planting, crop, climate, bed } = growing;
  const indoors = planting.start === "seed indoors" && crop.indoors;
  const soilC = indoors ? indoors.soilTempC.value : climate.soilC(start.day, bed);
  const seeds = seedsFor(growing, soilC);
  if (seeds === null) return null;
  if (!crop.outdoors || !planting.repeat) return { seeds, times: 1 };
  const sowings = sowingsOf(growing, crop.outdoors);
  const piece = pieceCm(growing, sowings);
  const all = rowCm(growing);
  const part = piece === null || all === null ? 1 : piece / all;
  return { seeds: seeds * part * sowings.length, times: sowings.length };
}

/** How much of it to order, in a sentence; none where the plan does not say how much it grows. */
function howMany(growing: Growing, start: Anchor): readonly Sentence[] {
  const plants = plantsOf(growing);
  if (plants === null) return roomTold(growing);
  if (growing.planting.start === "tubers") return [how(`${plants} seed tubers.`)];
  if (growing.planting.start === "cloves") {
    const bulbs = bulbsFor(plants);
    return [how(`${bulbs} ${bulbs === 1 ? "bulb" : "bulbs"}, about ${plants} cloves.`)];
  }
  const all = seedsOfAll(growing, start);
  if (all === null) return [];
  const sowings = all.times > 1 ? ` for ${all.times} sowings` : "";
  return [how(`About ${saidCount(all.seeds)} seeds${sowings}.`)];
}

/** What its bed would hold, where the plan does not say how much it grows and it has the bed alone. */
function roomTold({ planting, crop, bed, plan }: Growing): readonly Sentence[] {
  const alone = plan.plantings.filter((other) => other.bed === planting.bed).length === 1;
  if (!alone || !bed?.lengthCm || !bed.widthCm) return [];
  const apartCm = spacingCm(crop, planting);
  const rowsCm = crop.settingOut?.rowsCm.value ?? crop.outdoors?.rowsCm.value ?? apartCm;
  const room = { lengthCm: bed.lengthCm.si, widthCm: bed.widthCm.si, apartCm, rowsCm };
  const { plants } = layoutOf(room);
  return plants > 0 ? [how(`The bed holds about ${plants}.`)] : [];
}

/** In January there is time to choose another: said where a usual season does not bring it to harvest in time. */
function tooSlow(growing: Growing): readonly Sentence[] {
  const answer = ripening(growing);
  if (answer.ripens) return [];
  const other = answer.fits === null ? "." : `; look for a kind of ${answer.fits} days or fewer.`;
  return [caution(`In a usual season it is not ready here before winter ends it${other}`)];
}

/** Once, in the dead of winter, and never later than three weeks before it is needed. */
function order(growing: Growing): readonly Task[] {
  const { planting, plan } = growing;
  const start = anchorOf(growing, "start");
  const what = BOUGHT[planting.start];
  if (growing.sowing > 1 || !start || what === "" || planting.inSince !== null) return [];
  const season = seasonOf(plan);
  const south = (plan.site.latitude ?? 1) < 0;
  const winter = theDay(plan.year, south ? 7 : 1, 25);
  const due =
    planting.start === "cloves"
      ? plus(start.day, -CLOVES_AHEAD_DAYS)
      : earliest(winter, plus(start.day, -21));
  if (due < plus(season.from, -60)) return [];
  return [
    plantingTask(growing, "things to have", "order", {
      window: window(plus(due, -10), due, plus(due, 21)),
      harm: "when you can",
      rhythm: "daily",
      minutes: 15,
      title: { verb: `Order ${what}:`, object: named(growing), where: null },
      say: [
        ...howMany(growing, start),
        how("See first what is left from last year and still good."),
        why("First wanted about ", { day: start.day }, "."),
        ...tooSlow(growing),
      ],
      because: () => [["Wanted by ", { day: start.day }, "."]],
      grounds: planting.start === "cloves" ? start.grounds : ["time of year", ...start.grounds],
      hangsOn: tasksBehind(growing, "start"),
      brings: [NEEDED[planting.start]],
    }),
  ];
}

function sprout(growing: Growing): readonly Task[] {
  const { planting } = growing;
  const start = anchorOf(growing, "start");
  if (!planting.sproutedFirst || !start || planting.inSince !== null) return [];
  const due = plus(start.day, -SPROUT_DAYS);
  return [
    plantingTask(growing, "things to have", "sprout", {
      window: window(plus(due, -7), due, plus(due, 10)),
      harm: "when you can",
      rhythm: "daily",
      minutes: 10,
      title: { verb: "Set to sprout:", object: objectOf(growing), where: null },
      say: [
        how(
          "Stand the tubers in egg boxes, eyes up, in a cool bright place out of frost. Cut big ones two days before planting, two eyes to a piece.",
        ),
        why(
          "Short green shoots give them about four weeks' start. Planting looks like ",
          { day: start.day },
          ".",
        ),
      ],
      because: () => [["Four weeks before planting, ", { day: start.day }, "."]],
      grounds: start.grounds,
      hangsOn: tasksBehind(growing, "start"),
    }),
  ];
}

/** What is ordered in winter, set to sprout and laid to soak; what jobs need beside that is `haveReady`'s. */
export const THINGS_TO_HAVE: Practice = {
  name: "things to have",
  pass: "rest",
  tasks: (growing) => [...order(growing), ...sprout(growing), ...soak(growing)],
};
