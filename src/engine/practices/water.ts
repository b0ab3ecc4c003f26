import { litres, plus, quantity } from "../../base/index.ts";
import type { Site } from "../../garden/model/index.ts";
import { areaM2Of, dripMinutes, litresOn, type Runs, runsOf } from "../growth/watering.ts";
import { deed } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { caution, how, type Sentence, sign, type TextPiece, why } from "./sentence.ts";
import { sharedTask, type TaskOf, window } from "./task.ts";
import { type DryWeek, dryWeeksOf, type WaterNeed } from "./weekly-need.ts";

/** An inch, as both kinds of household say it. */
const INCH: TextPiece = { quantity: quantity(25, "mm") };

/** A depth of water as one says it, to the nearest 5 mm and no less than that. */
const depth = (mm: number): TextPiece => ({
  quantity: quantity(Math.max(5, Math.round(mm / 5) * 5), "mm"),
});

/** Letters that the beds' minutes may take in a text. Source: house rule, so that the sign and the caution stay. */
const LONGEST_LIST = 200;

type DripBed = { readonly name: string; readonly runs: Runs };

/** Beds whose minutes are known: those with drip lines, a size and a need. */
function dripBedsOf(needs: readonly WaterNeed[]): readonly DripBed[] {
  return needs.flatMap(({ bed, mm }) => {
    const areaM2 = bed && areaM2Of(bed);
    if (!bed?.drip || mm === null || areaM2 === null) return [];
    const minutes = dripMinutes({ needMm: mm, areaM2, flowLh: bed.drip.si });
    return [{ name: bed.name, runs: runsOf(minutes) }];
  });
}

/** How often: nothing for once. */
function sayTimes(times: number): string {
  if (times === 7) return " every day";
  return times === 1 ? "" : times === 2 ? " twice" : ` ${times} times`;
}

/** `Root bed 40 min, South bed 50 min twice`; those that do not fit by their least and most. */
function listDripTimes(beds: readonly DripBed[]): string {
  const texts = beds.map(({ name, runs }) => `${name} ${runs.minutes} min${sayTimes(runs.times)}`);
  let count = beds.length;
  while (count > 0 && texts.slice(0, count).join(", ").length > LONGEST_LIST) count -= 1;
  const rest = beds.slice(count).map(({ runs }) => runs.minutes * runs.times);
  if (rest.length === 0) return texts.join(", ");
  const more = `${rest.length} more ${Math.min(...rest)} to ${Math.max(...rest)} min in all`;
  return [...texts.slice(0, count), more].join(", ");
}

/** Beds that rain does not water as it does the rest, told by the day: bags, which spread over their rims, and glass. */
const byTheDay = ({ bed }: WaterNeed) => bed?.kind === "bags" || bed?.kind === "greenhouse";

function waterSentences(needs: readonly WaterNeed[]): readonly Sentence[] {
  const dripBeds = dripBedsOf(needs);
  const names = new Set(dripBeds.map(({ name }) => name));
  const byHand = needs.filter(({ bed }) => bed === null || !names.has(bed.name));
  const open = byHand.filter((need) => !byTheDay(need));
  const who = dripBeds.length > 0 ? "The other beds: " : "Give the beds ";
  return [
    ...(dripBeds.length > 0 ? [how(`Drip: ${listDripTimes(dripBeds)}.`)] : []),
    ...(open.length > 0 ? [how(who, mostOf(open), " of water over the week, rain counted.")] : []),
    ...byHand.filter(byTheDay).map(dailySentence),
    ...(needs.some(({ bed }) => bed?.kind !== "greenhouse")
      ? [how("After ", mostOf(inTheOpen(needs)), " of rain, none.")]
      : []),
  ];
}

/** `Bags: about 5 gal a day.`; where that is not known, what to look for. */
function dailySentence({ bed, mm }: WaterNeed): Sentence {
  const name = bed?.name ?? "";
  const dry = bed?.kind === "greenhouse" ? "; no rain gets in there" : "";
  const all = bed?.bags && bed.bags.count > 1 ? ` for all ${bed.bags.count}` : "";
  const areaM2 = bed && areaM2Of(bed);
  if (mm === null || areaM2 === null) return how(`${name}: keep it damp a finger deep${dry}.`);
  return how(
    `${name}: about `,
    { quantity: litres(litresOn(areaM2, mm) / 7) },
    ` a day${all}${dry}.`,
  );
}

/** Those that rain can reach and that are told by depth; all where there are none. */
function inTheOpen(needs: readonly WaterNeed[]): readonly WaterNeed[] {
  const open = needs.filter((need) => !byTheDay(need));
  return open.length > 0 ? open : needs;
}

/** What the thirstiest of some beds wants in the week, or an inch where that is not known. */
function mostOf(needs: readonly WaterNeed[]): TextPiece {
  const known = needs.flatMap(({ mm }) => mm ?? []);
  return known.length > 0 ? depth(Math.max(...known)) : INCH;
}

/** Rain of a week that is hardly any [mm]. Source: house rule. */
const LITTLE_RAIN_MM = 3;

/** Rain as one says it, to the nearest 5 mm. */
const rainSaid = (mm: number): TextPiece => ({
  quantity: quantity(Math.round(mm / 5) * 5, "mm"),
});

function reason(
  { latitude, normals }: Site,
  { needs, rainMm }: Pick<DryWeek, "needs" | "rainMm">,
): Sentence {
  if (needs.every(({ bed }) => bed?.kind === "greenhouse"))
    return why("Plants under glass use about ", mostOf(needs), " this week, in the usual warmth.");
  if (latitude === null || normals === null) {
    const missing = latitude === null ? "latitude" : "monthly lows and highs";
    return why(`The plan gives no ${missing}, so this is the usual rule and no minutes.`);
  }
  if (rainMm !== null && rainMm < LITTLE_RAIN_MM)
    return why("Hardly any rain fell or is forecast for this week.");
  if (rainMm !== null)
    return why(
      "About ",
      rainSaid(rainMm),
      " of rain fell or is forecast for this week: not enough.",
    );
  const rain = normals.rainMm ? ", beyond the usual rain" : ", no rain taken off";
  return why(
    "In a usual year the thirstiest bed loses about ",
    mostOf(inTheOpen(needs)),
    ` this week${rain}.`,
  );
}

const BACKFLOW = caution(
  "A drip line needs a backflow preventer where it joins the house's water; local rules say which.",
);

/** What the week's need was reckoned from, as `why` tells it. */
function needReason(
  { latitude, normals }: Site,
  { needs, rainMm }: Pick<DryWeek, "needs" | "rainMm">,
): readonly TextPiece[] {
  if (latitude === null || normals === null) return ["It is the usual rule of an inch a week."];
  const usualRain = normals.rainMm
    ? ", less the usual rain"
    : "; the plan gives no rain to take off";
  const rain = rainMm === null ? usualRain : ", less the rain that fell or is forecast";
  const airs = rainMm === null ? "this place's usual" : "these days'";
  const from = ` this week: what short grass gives off by FAO's paper 56, from ${airs} lows and highs and its sun, times what the crop takes at its age`;
  return ["The thirstiest bed loses about ", mostOf(inTheOpen(needs)), from, rain, "."];
}

/** A greenhouse by its name where nothing else needs water. */
function bedsTitle(needs: readonly WaterNeed[]): string {
  const [first, ...more] = needs;
  return first?.bed?.kind === "greenhouse" && more.length === 0 ? first.bed.name : "the beds";
}

function taskOf({ plan }: WholeGarden, week: DryWeek, first: boolean): TaskOf<"water"> {
  const { number, monday, needs, due } = week;
  const warned = first && plan.beds.some((bed) => bed.drip);
  return sharedTask(plan.year, null, "water", `week-${number}`, {
    window: window(due, due, plus(monday, 6), "earlier"),
    harm: "when you can",
    rhythm: "daily",
    minutes: 10,
    title: { verb: "Water", object: bedsTitle(needs), where: "this week" },
    say: [
      ...waterSentences(needs),
      sign("A finger two knuckles deep feels dry."),
      reason(plan.site, week),
      ...(due > monday ? [why("What fell serves the beds until ", { day: due }, ".")] : []),
      ...(warned ? [BACKFLOW] : []),
    ],
    because: [
      ["Something grows in the beds, and in a usual year this week's rain is not enough for it."],
      needReason(plan.site, week),
    ],
    basis: ["time of year"],
  });
}

/** Watering all beds, once a week while something grows and the usual rain is not enough for it; none gets under glass. */
export const WATER = definePractice({
  name: "water",
  past: { whole: "watered" },
  words: ["watering", "irrigating"],
  deeds: [
    deed(
      [
        "watered(?: (?:everything|(?:all )?(?:the )?(?:beds|garden)|twice|again))?",
        "gave water (?:at night )?to (?:everybody|everything|everyone|all)",
        "(?:hosed|soaked|drenched) (?:everything|the lot|the garden|the beds|all the beds)",
        "gave (?:everything|the lot|the garden|the beds) a (?:good |deep |proper )?(?:soak|soaking|drink|watering|water)",
        "(?:everything|(?:all )?(?:the )?(?:beds|garden)) (?:is |are |was |were )?watered",
      ],
      { about: "garden" },
    ),
  ],
  answers: { done: "Watered" },
  away: { neighbour: { help: "watering", may: () => true } },
  tasks: {
    shared: (garden) => dryWeeksOf(garden).map((week, i) => taskOf(garden, week, i === 0)),
  },
});
