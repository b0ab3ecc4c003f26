import { isZone, type Problem } from "../../base/index.ts";
import { diagnostic } from "./codes.ts";
import { takeDiary } from "./diary.ts";
import { numberUnder, type Tree, valueUnder, type Words, wordsUnder } from "./tree.ts";
import { treeOf } from "./yaml.ts";

/** The name under which the years behind a place lie beside its plan, once they were asked for. */
export const YEARS_FILE = "open-meteo.yaml";

/** A place whose years behind are asked for [degrees, south and west negative], and its clock. */
export type YearsPlace = {
  readonly latitude: number;
  readonly longitude: number;
  readonly clock: string;
};

/** Whether what stands behind `weather:` asks a service for the years behind the place, and names no file: `from Open-Meteo`. */
export const asksForYears = ({ text }: Pick<Words, "text">) =>
  /^(?:from )?open-meteo$/i.test(text.trim());

/** How far the years may be of another place [degrees]: half a tenth, to which places are rounded, and a little for the rounding. */
const NEAR_DEGREES = 0.051;

/** Whether a weather file is of a place, by the coordinates in it. */
function isOf(tree: Tree | null, { latitude, longitude }: Omit<YearsPlace, "clock">): boolean {
  const off = (key: string, degrees: number) =>
    Math.abs((numberUnder(tree, key) ?? Number.NaN) - degrees);
  const round = off("longitude", longitude);
  return off("latitude", latitude) <= NEAR_DEGREES && Math.min(round, 360 - round) <= NEAR_DEGREES;
}

/** What finding the years needs: the files beside the plan, the place, and whether the plan has frost dates of its own. */
export type YearsReadContext = {
  readonly problems: Problem[];
  readonly beside: { readonly texts: Readonly<Record<string, string>> };
  readonly latitude: number | null;
  readonly longitude: number | null;
  readonly hasFrosts: boolean;
};

/**
 * The text of the years behind the place that `weather: from Open-Meteo` asks for; null where they are not beside the plan or of
 * another place, which is reported: a doubt where the plan has frost dates of its own. Problems: `forecast-nowhere`,
 * `years-missing`; doubt: `years-awaited`.
 */
export function yearsBeside(asked: Words, reading: YearsReadContext): string | null {
  const { problems, beside, latitude, longitude, hasFrosts } = reading;
  if (latitude === null || longitude === null) {
    const is = "The years behind a place need its latitude and longitude";
    const shouldBe = "Write latitude: 46.6 and longitude: -111.5, in degrees";
    problems.push(diagnostic("forecast-nowhere", asked.at, is, shouldBe));
    return null;
  }
  const text = beside.texts[YEARS_FILE];
  if (text !== undefined && isOf(treeOf(text, YEARS_FILE).tree, { latitude, longitude }))
    return text;
  const code = hasFrosts ? "years-awaited" : "years-missing";
  const at = [latitude, longitude].map((degrees) => degrees.toFixed(1)).join(",");
  const fetched = `Fetch them with site --at ${at}, as ${YEARS_FILE} beside the plan`;
  const shouldBe = hasFrosts ? fetched : `${fetched}, or write last frost: and first frost:`;
  problems.push(
    diagnostic(code, asked.at, "The years behind this place are not here yet", shouldBe),
  );
  return null;
}

/**
 * The place whose years a plan's text asks for and has not beside it; null where it asks for none, has them, or does not say where it
 * lies. Never throws, whatever the text.
 */
export function yearsWanted(
  text: string,
  {
    file,
    beside = {},
  }: { readonly file: string; readonly beside?: Readonly<Record<string, string>> },
): YearsPlace | null {
  const { tree } = treeOf(takeDiary(text, file).rest, file);
  const place = tree?.kind === "map" ? valueUnder(tree, "place") : null;
  const asked = wordsUnder(place, "weather");
  if (asked === null || !asksForYears(asked)) return null;
  const [latitude, longitude] = [
    degreesIn(place, "latitude", 90),
    degreesIn(place, "longitude", 180),
  ];
  const clock = wordsUnder(place, "clock")?.text ?? "";
  if (latitude === null || longitude === null || !isZone(clock)) return null;
  const known = beside[YEARS_FILE];
  const isHere =
    known !== undefined && isOf(treeOf(known, YEARS_FILE).tree, { latitude, longitude });
  return isHere ? null : { latitude, longitude, clock };
}

function degreesIn(place: Tree | null, key: string, most: number): number | null {
  const found = numberUnder(place, key);
  return found !== null && Math.abs(found) <= most ? found : null;
}
