/**
 * The answers of somebody who makes a garden, each as it was typed and empty where nothing was. A row that is empty counts as not
 * there; rows keep their places, so that a crop can name its bed by the bed's place.
 */
export type FirstAnswers = {
  readonly garden: string;
  readonly year: string;
  readonly measures: "inches and °F" | "metric";
  readonly clock: string;
  /** `46.6`, or `46.6, -112.0` with the longitude. */
  readonly where: string;
  readonly lastFrost: string;
  readonly firstFrost: string;
  /** Whether both were guessed, which the plan then says. */
  readonly guessed: boolean;
  /** How hot the hottest month's afternoons usually are and how cold the coldest month's nights. */
  readonly hottest: string;
  readonly coldest: string;
  /** Where frost dates and means come from in place of the four before it, `from Open-Meteo`. */
  readonly weather: string;
  /** The service that is asked for the nights ahead. */
  readonly forecast: string;
  readonly people: readonly FirstPerson[];
  readonly beds: readonly FirstBed[];
  readonly crops: readonly FirstCrop[];
};

/** Somebody who gardens, with the hours for it and those at home, `Sat 9-12`. */
export type FirstPerson = {
  readonly name: string;
  readonly gardens: string;
  readonly home: string;
};

/** What plants can stand in, by the word that a plan has for it. */
export const BED_KINDS = ["bed", "bags", "pots", "greenhouse", "tunnel"] as const;

/** One of them. */
export type BedKind = (typeof BED_KINDS)[number];

/** A bed: its sides, for all but bags and pots, which have a number and what each holds. */
export type FirstBed = {
  readonly name: string;
  readonly kind: BedKind;
  readonly length: string;
  readonly width: string;
  readonly count: string;
  readonly holds: string;
};

/** What a crop's amount can count, by the word that a plan has for it; `length` is that of its row. */
export const AMOUNT_UNITS = [
  "plants",
  "rows",
  "length",
  "cloves",
  "tubers",
  "sets",
  "crowns",
] as const;

/** One of them. */
export type AmountUnit = (typeof AMOUNT_UNITS)[number];

/** A crop by the name of one of it, how much of it, in which bed by its place (null: in none), how it begins and since when it stands. */
export type FirstCrop = {
  readonly crop: string;
  readonly bed: number | null;
  readonly amount: string;
  readonly unit: AmountUnit;
  /** `seed indoors`, `plants` and so on; empty: as is usual. */
  readonly start: string;
  readonly since: string;
};

/**
 * Where an answer stands among the answers: `lastFrost`, `beds.0.length`. Forms use it as the field's name.
 */
export type AnswerPath = string;

/** Whether nothing was typed in a row; what is chosen from a list does not count. */
export function isBlankBed({ name, length, width, count, holds }: FirstBed): boolean {
  return [name, length, width, count, holds].every((said) => said === "");
}

/** Whether nothing was typed in a row. */
export function isBlankPerson({ name, gardens, home }: FirstPerson): boolean {
  return [name, gardens, home].every((said) => said === "");
}

const DEGREES = String.raw`([-−–]?\d{1,3}(?:[.,]\d+)?)\s*°?`;
const WHERE = new RegExp(
  `^${DEGREES}\\s*([NS])?(?:(?:\\s*[,;]\\s*|\\s+)${DEGREES}\\s*([EW])?)?$`,
  "i",
);

/**
 * Latitude and longitude [degrees, south and west negative] as a map shows them: `46.59, -112.04`, `46.59° N, 112.04° W`; one
 * number is the latitude alone. Null for anything else; whether there is such a place is for the plan's reader.
 */
export function coordinatesIn(
  where: string,
): { readonly latitude: number; readonly longitude: number | null } | null {
  const found = WHERE.exec(where.trim());
  if (!found) return null;
  const [, latitude = "", north = "", longitude, east = ""] = found;
  return {
    latitude: degreesOf(latitude, /s/i.test(north)),
    longitude: longitude === undefined ? null : degreesOf(longitude, /w/i.test(east)),
  };
}

function degreesOf(said: string, negative: boolean): number {
  const degrees = Number(said.replace(/^[−–]/, "-").replace(",", "."));
  return negative && degrees > 0 ? -degrees : degrees;
}
