import { type Measures, suggestion } from "../../base/index.ts";
import { diagnostic } from "./codes.ts";
import type { ReadLog } from "./place.ts";
import { type Tree, valueUnder, wordsUnder } from "./tree.ts";

const US =
  /^(?:inches|inch|in|feet|ft|us|imperial|°f|fahrenheit)(?:(?: and |, | & )(?:°f|f|fahrenheit|inches|feet))?$/i;
const METRIC =
  /^(?:metric|cm|centimetres|metres|si|°c|celsius)(?:(?: and |, | & )(?:°c|c|celsius|cm))?$/i;

/** Zones where gardeners measure in inches. Source: from memory, unchecked: IANA zones of the United States. */
const US_ZONES =
  /^(?:US\/.*|Pacific\/Honolulu|America\/(?:New_York|Detroit|Chicago|Denver|Boise|Phoenix|Los_Angeles|Anchorage|Juneau|Sitka|Nome|Adak|Menominee|Indiana\/.*|Kentucky\/.*|North_Dakota\/.*))$/;

/**
 * The household's measures. Where the plan does not say, they follow the first unit in it, else its time zone, and are
 * listed as filled in. Problem: `unknown-word`.
 */
export function readMeasures(tree: Tree, text: string, { problems, filled }: ReadLog): Measures {
  const words = wordsUnder(tree, "measures");
  if (words && US.test(words.text)) return "us";
  if (words && METRIC.test(words.text)) return "metric";
  const [measures, why] = guessMeasures(
    text,
    wordsUnder(valueUnder(tree, "place"), "clock")?.text ?? "",
  );
  if (words) {
    const advice = suggestion(
      words.text,
      ["metric", "inches and °F"],
      "Write inches and °F, or metric",
    );
    problems.push(
      diagnostic("unknown-word", words.at, `${words.text.slice(0, 60)} are no measures`, advice),
    );
    return measures;
  }
  filled.push({
    what: "measures",
    value: measures === "us" ? "inches and °F" : "metric",
    why,
  });
  return measures;
}

function guessMeasures(text: string, zone: string): readonly [Measures, string] {
  const plain = text.replace(/#.*$/gm, "");
  const unit = /\d ?(°F|in|ft|feet|inch(?:es)?|gal|yd|°C|cm|m|mm|L|litres?)\b/.exec(plain)?.[1];
  if (unit) return [/^(?:°C|cm|m|mm|L|lit)/.test(unit) ? "metric" : "us", "the plan's own units"];
  return [US_ZONES.test(zone) ? "us" : "metric", "the usual ones of that time zone"];
}
