import {
  capital,
  degreesC,
  joinWords,
  type Measures,
  plus,
  sayQuantity,
  sayWeekday,
} from "../../base/index.ts";
import type {
  BedTonight,
  FrostNeed,
  FrostTonight,
  LeaveReason,
  PlantTonight,
  Tray,
} from "../../engine/index.ts";

/** A heading, and the lines under it. */
export type Section = { readonly name: string; readonly lines: readonly string[] };

/** A night in words: a heading, beds in walking order, then trays, then notes for all of them. */
export type FrostTonightText = {
  readonly head: readonly string[];
  readonly sections: readonly Section[];
  readonly foot: readonly string[];
};

const LEAVE_REASONS: Readonly<Record<LeaveReason, string>> = {
  "not up": "nothing is up yet, and what lies in the ground is safe",
  "stands the winter": "cold like this will do no damage",
  "under the soil": "the tops may go, what you eat is safe under the soil",
  hardy: "hardy enough",
  "light frost only": "a light frost will do no damage",
  "warm enough": "not cold enough to do harm",
  "under fabric": "already under fabric, and that is enough",
  "under cloches": "the cloches over it are enough; shut their ends",
  "in the greenhouse": "warm enough under glass",
};

/** How soon a plant that needs something tonight is hurt: the warmest temperature first [°C]; what is left alone last. */
const urgency = ({ need, killsC }: PlantTonight) =>
  need.kind === "leave" ? Number.NEGATIVE_INFINITY : (killsC ?? Number.NEGATIVE_INFINITY);
const soonest = (plants: readonly PlantTonight[]) => Math.max(...plants.map(urgency));

/** First what dies first; what is as soon hurt in the order that it is walked past. */
const diesFirst = (a: readonly PlantTonight[], b: readonly PlantTonight[]) =>
  soonest(a) === soonest(b) ? 0 : soonest(b) - soonest(a);

/** A night's report in the household's measures, beds with what dies first in front; lines end with their full stop. */
export function frostTonightText(report: FrostTonight, measures: Measures): FrostTonightText {
  const beds = [...report.beds]
    .sort((a, b) => diesFirst(a.plants, b.plants))
    .map((bed) => nightBedSection(bed, report.beds.length === 1));
  const trays = report.trays.map((tray) => nightTrayLine(tray, measures));
  const sections =
    trays.length > 0 ? [...beds, { name: "Trays", lines: [...new Set(trays)] }] : beds;
  return { head: nightHeadLines(report, measures), sections, foot: footLines(report) };
}

function nightHeadLines(report: FrostTonight, measures: Measures): readonly string[] {
  const { day, forecastC, lowC } = report;
  const forecast = sayQuantity(degreesC(forecastC), measures);
  const here = sayQuantity(degreesC(lowC), measures);
  const night = `The night to ${sayWeekday(plus(day, 1))}: ${forecast} by the forecast`;
  const busy = isBusy(report) ? [] : ["Nothing to cover or bring in tonight."];
  return [
    `${night}${here === forecast ? "" : `, about ${here} here`}, colder still at the leaves.`,
    ...busy,
  ];
}

const isBusy = ({ beds, trays }: FrostTonight) =>
  trays.some(({ need }) => need !== "leave") ||
  beds.some(({ plants }) => plants.some(({ need }) => need.kind !== "leave"));

/**
 * A bed's night in words, `only` where there is no other. Similar needs are in one line: work first, what dies first in front,
 * then what is left alone.
 */
export function nightBedSection(bed: BedTonight, only: boolean): Section {
  const groups = new Map<string, PlantTonight[]>();
  for (const plant of bed.plants) {
    const key = `${JSON.stringify(plant.need)}${plant.need.kind === "beyond" ? plant.family : ""}`;
    groups.set(key, [...(groups.get(key) ?? []), plant]);
  }
  const all = [...groups.values()].sort(diesFirst);
  const work = all.filter(([first]) => first?.need.kind !== "leave");
  const rest = all.filter(([first]) => first?.need.kind === "leave");
  const carry = work.length > 0 && bed.carry ? ["Or carry the bags under a roof."] : [];
  const name = bed.name === "" ? (only ? "The garden" : "In no bed") : bed.name;
  return { name, lines: [...work.map(plantsLine), ...carry, ...rest.map(plantsLine)] };
}

function plantsLine(plants: readonly PlantTonight[]): string {
  const [first] = plants;
  const names = joinWords([...new Set(plants.map(({ name }) => name))]);
  return first ? needLine(first.need, names, plants) : "";
}

function needLine(need: FrostNeed, names: string, plants: readonly PlantTonight[]): string {
  switch (need.kind) {
    case "leave":
      return `Leave ${names}: ${LEAVE_REASONS[need.why]}.`;
    case "bury":
      return `Bury the shoots of ${names} in loose soil; they push through again.`;
    case "pick":
      return pickLine(names, plants);
    case "cover":
      return coverLine(need, names, plants);
    case "beyond":
      return beyondLine(need.left, names, plants);
  }
}

/** Spears are cut; roots that stand half out of the soil are pulled, or kept under straw. */
const pickLine = (names: string, [first]: readonly PlantTonight[]) =>
  first?.family === "asparagus family"
    ? `Pick all ${names} that shows before dark: frost spoils it, and what is under the soil is safe.`
    : `Pull ${names} that are big enough, or heap straw over them: their shoulders freeze.`;

const ripenAfterPicking = ([first]: readonly PlantTonight[]) =>
  first?.family === "nightshade family";

const areBearing = (plants: readonly PlantTonight[]) =>
  plants.some(({ stage }) => stage === "bearing");

function coverLine(
  { fabric, sure, over }: Extract<FrostNeed, { kind: "cover" }>,
  names: string,
  plants: readonly PlantTonight[],
): string {
  const instead = over ? ", in place of the light one on it" : "";
  if (sure) return `Cover ${names} with ${fabric}${instead}.`;
  const first = areBearing(plants) ? " Pick what is ripe first." : "";
  return `Cover ${names} with ${fabric}${instead}: it may just save them.${first}`;
}

function beyondLine(
  left: Extract<FrostNeed, { kind: "beyond" }>["left"],
  names: string,
  plants: readonly PlantTonight[],
): string {
  const none = `No cover saves ${names} tonight`;
  switch (left) {
    case "pick":
      return `${none}: pick all that is sound${ripenAfterPicking(plants) ? ", green ones too" : ""}.`;
    case "comes again":
      return `${none}; if the tops go black, new ones come from below.`;
    case "lost":
      return `${none}; see tomorrow what is still green.`;
  }
}

function nightTrayLine({ name, place, need, floorC }: Tray, measures: Measures): string {
  const floor = floorC === null ? "" : sayQuantity(degreesC(floorC), measures);
  if (need === "into the house")
    return `Carry ${name} from the greenhouse, which nothing heats, into the house.`;
  if (need === "leave")
    return place === "indoors"
      ? `Leave ${name} indoors.`
      : `Leave ${name} out: the night stays above ${floor}.`;
  if (place === "out by day") return `Bring in ${name} before dusk, as after each day out.`;
  return `Bring in ${name} tonight: ${floor === "" ? "too cold for them out" : `they stay out only above ${floor}`}.`;
}

function footLines(report: FrostTonight): readonly string[] {
  const plants = report.beds.flatMap((bed) => bed.plants);
  const kinds = new Set(plants.map(({ need }) => need.kind));
  const covers = kinds.has("cover")
    ? [
        "Covers go on before dusk and reach the ground all round, off the leaves where you can.",
        "Two layers of fabric add little to one.",
        "Tomorrow uncover by mid-morning: once it is above freezing, before the sun heats it up under there.",
      ]
    : [];
  const water = [...kinds].some((kind) => kind !== "leave")
    ? ["Water dry soil before the evening; damp ground gives off more warmth."]
    : [];
  const { unknown } = report;
  const asks =
    unknown.length > 0 ? [`Not known here: ${joinWords(unknown)}. See to them yourself.`] : [];
  return [...water, ...covers, ...asks].map(capital);
}

/** `South bed: tomatoes and basil; trays: peppers`: what a night asks something for, by its place; empty where nothing. */
export function nightInShort({ beds, trays }: FrostTonight): string {
  const inBeds = beds.flatMap(({ name, plants }) => {
    const names = plants.filter(({ need }) => need.kind !== "leave").map((plant) => plant.name);
    if (names.length === 0) return [];
    return [`${name === "" ? "" : `${name}: `}${joinWords([...new Set(names)])}`];
  });
  const inTrays = trays.filter(({ need, place }) => need !== "leave" && place !== "out by day");
  const names = joinWords([...new Set(inTrays.map(({ name }) => name))]);
  return [...inBeds, ...(names === "" ? [] : [`trays: ${names}`])].join("; ");
}
