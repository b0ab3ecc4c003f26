import { dayOrThrow, earliest, plus } from "../../base/index.ts";
import type { Start } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import {
  bulbsFor,
  plantsOf,
  roundSeedCount,
  rowCm,
  rowLayoutOf,
  seedsFor,
} from "../growth/amounts.ts";
import type { Anchor } from "../growth/anchors.ts";
import { wintersYoung } from "../growth/autumn.ts";
import { bulbKindFor, bulbKindNamed } from "../growth/bulbs.ts";
import { ripening } from "../growth/ripening.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { rowPerSowingCm } from "../growth/successions.ts";
import { spacingCm } from "../rules/spacing.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { sowingsOf } from "./repeat.ts";
import { caution, how, type Sentence, why } from "./sentence.ts";
import { soakTasks } from "./soak.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Weeks that tubers stand in the light to sprout before they are planted. Source: common practice. */
const SPROUT_DAYS = 28;
/** Seed garlic, and what goes in in autumn, is ordered so long before it is planted, since it sells out. Source: common practice. */
const CLOVES_AHEAD_DAYS = 60;

/** So long after the winter's order it is another year's: autumn's sets and the beans of November, as the shops have them. Source: house rule. */
const NOT_IN_WINTER_DAYS = { sets: 180, seed: 270 } as const;

/** Days that what was ordered may be in the post. Source: house rule. */
const POST_DAYS = 10;

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

/** What does not keep till another year, as seed does. */
const NOT_KEPT: readonly Start[] = ["tubers", "sets", "crowns", "cloves"];

/** The same as the job that wants it names it. */
const NEEDED: Readonly<Record<Start, string>> = {
  ...BOUGHT,
  tubers: "tubers",
  cloves: "seed garlic",
};

/** The planting with its variety, and with its crop where its own name does not tell it, as one orders it. */
function nameWithKind(context: SowingContext): string {
  const { crop, planting } = context;
  const object = objectOf(context);
  const isNamed = [crop.one, crop.many, planting.written].some((word) => object.includes(word));
  const more = [isNamed ? null : crop.one, planting.variety].filter((word) => word !== null);
  return more.length === 0 ? object : `${object} (${more.join(", ")})`;
}

/** Seeds for all sowings of a planting and how many those are; null where the plan does not say how much it grows. */
function seedsOfAll(
  context: SowingContext,
  start: Anchor,
): { seeds: number; times: number } | null {
  const { planting, crop, climate, bed } = context;
  const indoors = planting.start === "seed indoors" && crop.indoors;
  const soilC = indoors ? indoors.soilTempC.value : climate.soilC(start.day, bed);
  const seeds = seedsFor(context, soilC);
  if (seeds === null) return null;
  if (!crop.outdoors || !planting.repeat) return { seeds, times: 1 };
  const sowings = sowingsOf(context, crop.outdoors);
  const piece = rowPerSowingCm(context, sowings);
  const all = rowCm(context);
  const part = piece === null || all === null ? 1 : piece / all;
  return { seeds: seeds * part * sowings.length, times: sowings.length };
}

/** How much of it to order, in a sentence; none where the plan does not say how much it grows. */
function howMany(context: SowingContext, start: Anchor): readonly Sentence[] {
  const plants = plantsOf(context);
  if (plants === null) return spaceSentences(context);
  if (context.planting.start === "tubers") return [how(`${plants} seed tubers.`)];
  if (context.planting.start === "sets") return [how(`${plants} sets.`)];
  if (context.planting.start === "cloves") {
    const bulbs = bulbsFor(plants);
    return [how(`${bulbs} ${bulbs === 1 ? "bulb" : "bulbs"}, about ${plants} cloves.`)];
  }
  if (context.planting.start === "crowns") return [how(`${plants} crowns.`)];
  const all = seedsOfAll(context, start);
  if (all === null) return [];
  const sowings = all.times > 1 ? ` for ${all.times} sowings` : "";
  return [how(`About ${roundSeedCount(all.seeds)} seeds${sowings}.`)];
}

/** What its bed would hold, where the plan does not say how much it grows and it has the bed alone. */
function spaceSentences({ planting, crop, bed, plan }: SowingContext): readonly Sentence[] {
  const alone = plan.plantings.filter((other) => other.bed === planting.bed).length === 1;
  if (!alone || !bed?.lengthCm || !bed.widthCm) return [];
  const apartCm = spacingCm(crop, planting);
  const rowsCm = crop.settingOut?.rowsCm.value ?? crop.outdoors?.rowsCm.value ?? apartCm;
  const room = { lengthCm: bed.lengthCm.si, widthCm: bed.widthCm.si, apartCm, rowsCm };
  const { plants } = rowLayoutOf(room);
  return plants > 0 ? [how(`The bed holds about ${plants}.`)] : [];
}

/** In January there is time to choose another: said where a usual season does not bring it to harvest in time. */
function tooSlow(context: SowingContext): readonly Sentence[] {
  const answer = ripening(context);
  if (answer.ripens) return [];
  const other = answer.fits === null ? "." : `; look for a kind of ${answer.fits} days or fewer.`;
  if (context.climate.rough && !answer.certain)
    return [caution(`It may not be ready here before winter ends it${other}`)];
  return [caution(`In a usual season it is not ready here before winter ends it${other}`)];
}

/** Which kind of onion the place's days are for, or that it is one for the winter, where the plan names none. */
function whichKind(context: SowingContext, start: Anchor): readonly Sentence[] {
  const { crop, planting, plan } = context;
  const { latitude } = plan.site;
  if (crop.bulbs && planting.variety === null && wintersYoung(context, start.day))
    return [how("Ask for a kind for autumn planting: others bolt in spring.")];
  if (!crop.bulbs || latitude === null || bulbKindNamed(planting) !== null) return [];
  return [how(`Days here are for ${bulbKindFor(latitude)} kinds.`)];
}

/** Once, in the dead of winter, and never later than three weeks before it is needed. */
function order(context: SowingContext): readonly TaskOf<"things to have">[] {
  const { planting, plan } = context;
  const start = anchorOf(context, "start");
  const what = BOUGHT[planting.start];
  if (context.sowing > 1 || !start || what === "" || planting.inSince !== null) return [];
  const season = seasonOf(plan);
  const south = (plan.site.latitude ?? 1) < 0;
  const winter = dayOrThrow(plan.year, south ? 7 : 1, 25);
  const bulbs = NOT_KEPT.includes(planting.start);
  const later = start.day - winter > NOT_IN_WINTER_DAYS[bulbs ? "sets" : "seed"];
  const due =
    planting.start === "cloves" || later
      ? plus(start.day, -CLOVES_AHEAD_DAYS)
      : earliest(winter, plus(start.day, -21));
  if (due < plus(season.from, -60)) return [];
  return [
    plantingTask(context, "things to have", "order", {
      window: window(plus(due, -10), due, earliest(plus(due, 21), plus(start.day, -POST_DAYS))),
      harm: "when you can",
      rhythm: "daily",
      minutes: 15,
      title: { verb: `Order ${what}:`, object: nameWithKind(context), where: null },
      say: [
        ...howMany(context, start),
        ...whichKind(context, start),
        ...(NOT_KEPT.includes(planting.start)
          ? []
          : [how("See first what is left from last year and still good.")]),
        why("First wanted about ", { day: start.day }, "."),
        ...tooSlow(context),
      ],
      because: [["Wanted by ", { day: start.day }, "."]],
      basis: planting.start === "cloves" || later ? start.basis : ["time of year", ...start.basis],
      hangsOn: anchorTaskIds(context, "start"),
      brings: [NEEDED[planting.start]],
    }),
  ];
}

function sprout(context: SowingContext): readonly TaskOf<"things to have">[] {
  const { planting } = context;
  const start = anchorOf(context, "start");
  if (!planting.sproutedFirst || !start || planting.inSince !== null) return [];
  const due = plus(start.day, -SPROUT_DAYS);
  return [
    plantingTask(context, "things to have", "sprout", {
      window: window(plus(due, -7), due, plus(due, 10)),
      harm: "when you can",
      rhythm: "daily",
      minutes: 10,
      title: { verb: "Set … to sprout", object: objectOf(context), where: null },
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
      because: [["Four weeks before planting, ", { day: start.day }, "."]],
      basis: start.basis,
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** What is ordered in winter, set to sprout and laid to soak; what jobs need beside that is `haveReady`'s. */
export const THINGS_TO_HAVE = definePractice({
  name: "things to have",
  past: { whole: "provided for", order: "ordered", sprout: "set to sprout", soak: "soaked" },
  words: ["buying", "shopping", "soaking", "sprouting"],
  deeds: [
    deed(verb("ordered|bought|purchased"), { step: "order" }),
    deed(
      [
        "(?:set|put) … to (?:sprout|chit)",
        "… (?:set|laid|put|laid out|set out|put out) (?:to|for) (?:sprout|chit|sprouting|chitting)",
        "(?:chitted|chitting|sprouting) …",
      ],
      { step: "sprout" },
    ),
    deed(["soaked …", "put … to soak", "… soaked"], { step: "soak" }),
  ],
  answers: { done: "Got it" },
  tasks: {
    rest: (context) => [...order(context), ...sprout(context), ...soakTasks(context)],
  },
});
