import { type Quantity, quantityFrom, temperatureFrom } from "../../base/index.ts";
import type { DiaryLine, Plan } from "../model/plan.ts";
import { note } from "./clause.ts";
import { dryDaysIn } from "./dry-days.ts";
import type { Observation } from "./observation.ts";
import { bedNamed, planInSeason, subjectOf } from "./subjects.ts";

const TEMPERATURE =
  "(?<value>[-−+]?\\d+(?:[.,]\\d+)?) ?(?<unit>° ?[fc]|[fc]\\b|°|deg(?:rees)?(?: [fc])?)?";
/** The same without an unit only where it says so: `58 degrees`. */
const DEGREES = TEMPERATURE.replace(/\?$/, "");
const SOIL = [
  new RegExp(
    `^(?:(?<first>.+?) )?soil(?: temperature| temp| thermometer)?(?:,? (?:at )?\\d+ ?cm(?: deep)?)?(?:,? (?:in|of|at) (?:the )?(?<bed>.+?))?,?(?: is| was| at| says| reads| shows| up to| down to| still|:)* ${TEMPERATURE}$`,
  ),
  new RegExp(
    `^soil(?: temperature| temp| thermometer)?(?: is| was| says| reads| shows| up to| still|:)* ${TEMPERATURE} (?:in|of|at) (?:the )?(?<bed>.+)$`,
  ),
  new RegExp(`^${DEGREES} (?:soil|in the soil|soil temperature|soil temp)$`),
  new RegExp(`^${DEGREES} (?:in|at) (?:the )?(?<bed>.+)$`),
];
/** Words for a bed that has no name. */
const SOME_BED = /^(?:raised |veg |vegetable )?(?:bed|beds|soil|ground|garden|plot)$/;
const LOW = [
  new RegExp(
    `^(?:a |the |outside |outdoor )?(?:night'?s? )?(?:low|lowest|min|minimum)\\.?(?: temp| temperature)?(?: of| was| is| last night| tonight|:)* ${TEMPERATURE}(?: last night| overnight)?$`,
  ),
  new RegExp(
    `^(?:it |temperature )?(?:dropped to|fell to|sank to|dipped to|touched|hit) ${TEMPERATURE}(?: last night| overnight| in the night| this morning)?$`,
  ),
  new RegExp(
    `^(?:the )?thermometer (?:on|by) the (?:porch|fence|wall|shed|gate|post)(?: said| says| read| reads)? ${TEMPERATURE}$`,
  ),
  new RegExp(
    `^(?:the )?thermometer (?:said|says|read|reads|showed|shows|hit|was|at|down to) ${TEMPERATURE}(?: last night| overnight| this morning| at dawn)?$`,
  ),
  new RegExp(`^${DEGREES} (?:last night|overnight|at dawn|at sunrise|at first light)$`),
  /^(?<value>[-−]\d+(?:[.,]\d+)?)(?<unit>) (?:last night|overnight|this morning)$/,
  /^(?:it's |it is |it was |only )?(?<value>[-−]\d+(?:[.,]\d+)?) ?(?<unit>° ?[fc]|[fc]|°|degrees)?$/,
  /^(?:it's |it is |it was |only )?(?<value>(?:[-−]|[012]?\d|3[0-6])(?:\d)?) ?(?<unit>° ?f|f)$/,
  /^(?:it )?(?:went |got |fell )?down to (?<value>zero)(?<unit>)(?: last night| overnight)?$/,
  new RegExp(
    `^(?:the )?nights? (?:(?:is|are|was|were|still|down to|at|of|around|about|only) )*${TEMPERATURE}$`,
  ),
  new RegExp(`^(?:a |hard |light )*frost,?(?: of| down to)? ${TEMPERATURE}$`),
  new RegExp(
    `^(?:it |temperature )?(?:(?:went|got|fell|dropped|sank|dipped|came) )?down to ${TEMPERATURE}(?: last night| overnight| in the night| this morning)?$`,
  ),
];

const LENGTH = '(?<value>[\\d.,/½¼¾ ]+?) ?(?<unit>mm|cm|in|inch|inches|ft|feet|")';
const RAIN = [
  new RegExp(`^(?:rain|rained|rainfall)(?: of| was)?:? ${LENGTH}(?: last night)?$`),
  new RegExp(`^${LENGTH} (?:of )?rain(?: last night)?$`),
  new RegExp(`^${LENGTH} in (?:the )?(?:rain )?gauge$`),
  new RegExp(
    `^${LENGTH} (?:in one go|in (?:an|one|two|half an) hours?|in a (?:day|night|morning)|of (?:the )?wet stuff)$`,
  ),
  new RegExp(`^(?:rain )?gauge:? ${LENGTH}$`),
  /^(?:dropped |had |got |fell |another )*(?<value>[\d.,]+) ?(?<unit>mm) (?:since .+|overnight|last night|in the night|today|all day)$/,
];
const HEIGHT = new RegExp(
  `^(?<subject>.+?) (?:is |are |stand |stands |now |already |maybe |about |all )*${LENGTH}(?: tall| high)$`,
);
const MEAN_HEIGHT = new RegExp(
  `^(?<subject>.+?) (?:mean |average )?height(?: is| of|:)? ${LENGTH}$`,
);
/** Without a word for tall: centimetres and inches alone, since metres and feet may be a row's length. */
const BARE_HEIGHT = /^(?<subject>[\w' ]+?) (?<value>\d[\d.,]*) ?(?<unit>cm|in|inch|inches)$/;

/** The parts of the first pattern that fits. */
function partsIn(text: string, patterns: readonly RegExp[]): RegExpExecArray["groups"] | null {
  for (const pattern of patterns) {
    const parts = pattern.exec(text)?.groups;
    if (parts) return parts;
  }
  return null;
}

function rainIn(line: DiaryLine, text: string): Observation | null {
  const days = dryDaysIn(text, line.day);
  const none = days === null ? null : quantityFrom("0 mm");
  if (days !== null && none)
    return { kind: "measured", day: line.day, what: "rain", bed: null, value: none, days };
  const rain = partsIn(text, RAIN);
  const value = rain && quantityFrom(`${rain.value} ${rain.unit}`);
  return value ? { kind: "measured", day: line.day, what: "rain", bed: null, value } : null;
}

/** Nights are never so warm [°C]: the figure is in another unit, or of something else. Source: house rule. */
const WARMEST_NIGHT_C = 30;

/** Soil that is sown in is never so warm [°C]. Source: house rule. */
const WARMEST_SOIL_C = 45;

function heightIn(line: DiaryLine, text: string, plans: readonly Plan[]): Observation | null {
  const bare = BARE_HEIGHT.exec(text)?.groups;
  const height = HEIGHT.exec(text)?.groups ?? MEAN_HEIGHT.exec(text)?.groups ?? bare;
  const value = height && quantityFrom(`${height.value} ${height.unit}`);
  if (!value) return null;
  const subject = subjectOf((height.subject ?? "").replace(/^the /, ""), { day: line.day }, plans);
  if ("why" in subject) return bare ? null : note(line, subject.why);
  const { key: planting } = subject.planting;
  return { kind: "measured", day: line.day, what: "height", bed: null, planting, value };
}

/** What a clause says was measured: rain, a height, a night's low, or the soil of a bed; null where it says nothing of the kind. */
export function measurementIn(
  line: DiaryLine,
  text: string,
  plans: readonly Plan[],
): Observation | null {
  const length = rainIn(line, text) ?? heightIn(line, text, plans);
  if (length) return length;
  const low = partsIn(text, LOW);
  const night = low && degrees(low, line, plans);
  if (night && night.si > WARMEST_NIGHT_C)
    return note(line, "no night is so warm: give it with its unit");
  if (night) return { kind: "measured", day: line.day, what: "low", bed: null, value: night };
  return soilIn(line, text, plans);
}

function soilIn(line: DiaryLine, text: string, plans: readonly Plan[]): Observation | null {
  const soil = partsIn(text, SOIL);
  const value = soil && degrees(soil, line, plans);
  if (!soil || !value) return null;
  if (value.si > WARMEST_SOIL_C) return note(line, "no soil is so warm: give it with its unit");
  const where = soil.bed ?? soil.first?.replace(/^the /, "") ?? null;
  if (where === null) return { kind: "measured", day: line.day, what: "soil", bed: null, value };
  if (SOME_BED.test(where) && bedNamed(where, plans) === null)
    return { kind: "measured", day: line.day, what: "soil", bed: null, value };
  const bed = bedNamed(where, plans);
  // Degrees alone are soil's only outdoors; under glass it is the air that one measures.
  if (!text.includes("soil") && bed?.kind !== "bed") return null;
  if (bed === null) return note(line, `no bed is called ${where}`);
  return { kind: "measured", day: line.day, what: "soil", bed: bed.key, value };
}

/** A temperature as written; without its unit in the one of the plan. */
function degrees(
  { value = "", unit = "" }: Readonly<Record<string, string | undefined>>,
  { day }: DiaryLine,
  plans: readonly Plan[],
): Quantity | null {
  if (value === "zero") return temperatureFrom("0 °C", "metric");
  const letter = /[fc]$/.exec(unit)?.[0];
  const measures = planInSeason(day, plans)?.measures ?? "metric";
  const figure = value.replace("+", "");
  return temperatureFrom(letter ? `${figure} °${letter.toUpperCase()}` : figure, measures);
}
