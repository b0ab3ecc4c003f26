import {
  type Day,
  degreesC,
  instantOf,
  isoOf,
  type Minute,
  sayCount,
  sayDay,
  sayQuantity,
} from "../../base/index.ts";
import { type ColdNight, type FrostNeed, type FrostTonight, sunsetOn } from "../../engine/index.ts";
import { type Plan, planOn } from "../../garden/model/index.ts";
import type { Event } from "./event.ts";
import { eventFor } from "./event-for.ts";
import { frostTonightText, type Section } from "./frost-tonight.ts";
import { asManyAsFit, LONGEST_SESSION } from "./texts.ts";

/** When covers go on: this long before sunset, rounded down to quarters of an hour [min]. Source: common practice: before dusk. */
const BEFORE_SUNSET: Minute = 75;

/** When they go on where the sun does not set [minute of the day]. Source: house rule. */
const EVENING: Minute = 19 * 60;

/** How long the covering is given in the calendar, and how long before it the reminder rings [min]. Source: house rule. */
const [LASTS, RINGS_BEFORE] = [45, 180];

/**
 * A warning for each cold night ahead, on the day before the night and at the hour to do something; and for each that was warned
 * of and has turned milder, that nothing is to be done. In day order.
 */
export function frostNightEvents(
  plans: readonly Plan[],
  coldNights: readonly ColdNight[],
): readonly Event[] {
  return coldNights.map((night) => {
    const plan = planOn(plans, night.day);
    return night.saidC === null ? warning(plan, night) : calledOff(plan, night, night.saidC);
  });
}

function warning(plan: Plan, night: ColdNight): Event {
  const { report } = night;
  const { sections, foot } = frostTonightText(report, plan.measures);
  const head = `${headLine(plan, night)} Bed by bed:`;
  const room = LONGEST_SESSION - head.length - foot.join("\n").length - 2;
  const lines = asManyAsFit(sections.flatMap(workLine), room);
  const title = `${sayLow(plan, night.forecastC)} tonight: ${workInShort(report)}`;
  const beds = bedsThat(report, ({ kind }) => kind !== "leave");
  return {
    ...nightEvent(plan, night.day, { title, text: [head, ...lines, ...foot].join("\n") }),
    beds: beds.flatMap(({ bed }) => bed ?? []).sort(),
  };
}

function bedsThat({ beds }: FrostTonight, asks: (need: FrostNeed) => boolean) {
  return beds.filter(({ plants }) => plants.some(({ need }) => asks(need)));
}

function workInShort(report: FrostTonight): string {
  const covered = bedsThat(report, ({ kind }) => kind === "cover" || kind === "bury");
  if (covered.length > 0) return `cover ${sayCount(covered.length, "bed")}`;
  const lost = bedsThat(report, ({ kind }) => kind === "beyond");
  return lost.length > 0 ? `see to ${sayCount(lost.length, "bed")}` : "bring trays in";
}

/** The work in a place as one line; none where everything is left alone. */
function workLine({ name, lines }: Section): readonly string[] {
  const work = lines.filter((line) => !line.startsWith("Leave "));
  return work.length === 0 ? [] : [`${name}: ${work.join(" ")}`];
}

function headLine(plan: Plan, { day, forecastC, offByK }: ColdNight): string {
  const { colderBy } = plan.site;
  const here = colderBy ? `, ${sayLow(plan, forecastC - colderBy.si)} here` : "";
  const off = sayQuantity({ kind: "difference", si: offByK, said: null }, plan.measures);
  const colder = offByK > 0 ? `, and it may be ${off} colder` : "";
  return `The night after ${sayDay(day)}: ${sayLow(plan, forecastC)} by the forecast${here}${colder}.`;
}

const sayLow = (plan: Plan, lowC: number) => sayQuantity(degreesC(lowC), plan.measures);

function calledOff(plan: Plan, { day, forecastC }: ColdNight, saidC: number): Event {
  const text = `The forecast has turned milder: ${sayLow(plan, forecastC)} now, ${sayLow(plan, saidC)} before. Nothing to cover or bring in that night.`;
  return nightEvent(plan, day, { title: "No frost tonight after all", text });
}

function nightEvent(
  plan: Plan,
  day: Day,
  words: { readonly title: string; readonly text: string },
): Event {
  const { clock } = plan.site;
  const at = coveringAt(plan, day);
  return {
    ...eventFor([], {
      key: `${plan.year}/garden/frost-tonight/${isoOf(day)}`,
      set: "both",
      kind: "warning",
      ...words,
      readerText: words.text,
      when: {
        kind: "timed",
        from: instantOf(day, at, clock),
        to: instantOf(day, at + LASTS, clock),
      },
      day,
      busy: false,
      remindMinutesBefore: RINGS_BEFORE,
    }),
    categories: ["frost tonight"],
  };
}

function coveringAt({ site }: Plan, day: Day): Minute {
  const sunset = site.latitude === null ? null : sunsetOn(day, site.latitude, site.clock);
  return sunset === null ? EVENING : Math.floor((sunset - BEFORE_SUNSET) / 15) * 15;
}
