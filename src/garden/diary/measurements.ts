import { type Quantity, quantityFrom } from "../../base/index.ts";
import type { DiaryLine, Plan } from "../model/plan.ts";
import { note } from "./clause.ts";
import type { Observation } from "./observation.ts";
import { bedNamed, subjectOf } from "./subjects.ts";

const TEMPERATURE = "(?<value>-?\\d+(?:[.,]\\d+)?) ?(?<unit>°? ?[fc])";
const SOIL = new RegExp(
  `^(?:(?<first>.+?) )?soil(?: temperature| temp)?(?:,? (?:in|of|at) (?:the )?(?<bed>.+?))?,?(?: is| was| at|:)? ${TEMPERATURE}$`,
);
const LOW = new RegExp(
  `^(?:a |the )?(?:night'?s? )?(?:low|lowest|min|minimum)(?: of| was| is| last night| tonight|:)* ${TEMPERATURE}(?: last night)?$|^(?<value2>-?\\d+(?:[.,]\\d+)?) ?(?<unit2>°? ?[fc]) last night$`,
);

const LENGTH = '(?<value>[\\d.,/½¼¾ ]+?) ?(?<unit>mm|cm|in|inch|inches|ft|feet|")';
const RAIN = new RegExp(
  `^(?:(?:rain|rained|rainfall)(?: of| was)?:? ${LENGTH}|${LENGTH.replaceAll("?<value>", "?<value2>").replaceAll("?<unit>", "?<unit2>")} (?:of )?rain)(?: today| last night| yesterday)?$`,
);
const HEIGHT = new RegExp(
  `^(?<subject>.+?) (?:is |are |stand |stands |now )*${LENGTH}(?: tall| high)$`,
);

function rainIn(line: DiaryLine, text: string): Observation | null {
  const rain = RAIN.exec(text)?.groups;
  const value = rain && quantityFrom(`${rain.value ?? rain.value2} ${rain.unit ?? rain.unit2}`);
  return value ? { kind: "measured", day: line.day, what: "rain", bed: null, value } : null;
}

function heightIn(line: DiaryLine, text: string, plans: readonly Plan[]): Observation | null {
  const height = HEIGHT.exec(text)?.groups;
  const value = height && quantityFrom(`${height.value} ${height.unit}`);
  if (!value) return null;
  const subject = subjectOf((height.subject ?? "").replace(/^the /, ""), { day: line.day }, plans);
  if ("why" in subject) return note(line, subject.why);
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
  const low = LOW.exec(text)?.groups;
  const night = low && degrees(low.value ?? low.value2, low.unit ?? low.unit2);
  if (night) return { kind: "measured", day: line.day, what: "low", bed: null, value: night };
  const soil = SOIL.exec(text)?.groups;
  const value = soil && degrees(soil.value, soil.unit);
  if (!soil || !value) return null;
  const where = soil.bed ?? soil.first?.replace(/^the /, "") ?? null;
  if (where === null) return { kind: "measured", day: line.day, what: "soil", bed: null, value };
  const bed = bedNamed(where, plans);
  if (bed === null) return note(line, `no bed is called ${where}`);
  return { kind: "measured", day: line.day, what: "soil", bed: bed.key, value };
}

function degrees(value = "", unit = ""): Quantity | null {
  return quantityFrom(`${value} °${unit.replace(/[° ]/g, "").toUpperCase()}`);
}
