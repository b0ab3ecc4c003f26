import { describe, expect, test } from "vitest";
import { dueAt, type GardenPlace, stationCalled } from "./garden-at.ts";
import { missesOf } from "./misses.ts";
import { missed, yamlOf } from "./read.ts";

type Row = {
  readonly crop: string;
  readonly region: string;
  readonly start_indoors?: string;
  readonly method?: string;
  readonly plant_from?: string;
  readonly plant_to?: string;
  readonly harvest?: string;
};

const FILE = "maritime-months.yaml";
const { rows: ROWS } = yamlOf<{ readonly rows: readonly Row[] }>(FILE);

/** Western Oregon at Eugene; Stafford at Sheffield's means, with frosts from memory, unchecked. */
const OREGON = stationCalled("Eugene");
const STAFFORD = stationCalled("Sheffield", { last: "about 25 Apr", first: "about 28 Oct" });
const placeOf = ({ region }: Row): GardenPlace => (region === "uk_stafford" ? STAFFORD : OREGON);

/** The rows' crops as a plan of ours has them, without a day; the same word where it is ours. */
const CROPS: Readonly<Record<string, string>> = {
  "fava bean": "broad bean: 1 row",
  "broad bean": "broad bean: 1 row",
  "summer squash": "summer squash: 2 plants, from seed outdoors",
  "cantaloupe/melon": "melon: 2 plants, from seed indoors",
  "Brussels sprouts": "brussels sprouts: 4 plants",
  "onion sets": "onion: 20 sets",
  "early beetroot": "beet: 1 row",
  "early carrot": "carrot: 1 row",
  "Swiss chard": "chard: 1 row",
  "spring onion": "scallion: 1 row",
  garlic: "garlic: 20 cloves",
  rhubarb: "rhubarb: 2 crowns",
  shallot: "shallot: 20 sets",
  "parsnip (harvest only)": "parsnip: 1 row",
  "leek (harvest only)": "leek: 10 plants",
  "spinach beet (harvest only)": "chard: 1 row",
  "Swiss chard (harvest only)": "chard: 1 row",
};
const plantingOf = ({ crop }: Row) => CROPS[crop] ?? `${crop}: 1 row`;

const MONTHS = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");
const TOLERANCE_DAYS = 15;
const at = (month: string, date: number) =>
  Date.parse(`2027-${String(MONTHS.indexOf(month) + 1).padStart(2, "0")}-01`) +
  (date - 1) * 86_400_000;

/** Whether it has begun by the month's end, 15 days late at the most; a month's list names no first day. */
const hasBegun = (day: string, month: string) =>
  day !== "" && Date.parse(day) <= at(month, 31 + TOLERANCE_DAYS);

/** Whether the winter's harvest has begun before a month of the next year and goes on into it. */
function isHarvested(days: Readonly<Record<string, string>>): boolean {
  const ids = Object.keys(days).filter((id) => id.includes("/harvest/"));
  const all = ids.map((id) => days[id] ?? "").sort();
  return (all[0] ?? "9") < "2028-03-31" && (all.at(-1) ?? "") >= "2028-03-01";
}

const find = (days: Readonly<Record<string, string>>, pattern: RegExp) =>
  days[Object.keys(days).find((id) => pattern.test(id)) ?? ""] ?? "";

describe("months of a maritime climate", () => {
  test("are used row by row, and met within half a month, but for the misses told", () => {
    expect(ROWS).toHaveLength(48);
    const held = ROWS.flatMap((row) => {
      const days = dueAt(placeOf(row), [plantingOf(row)]);
      const name = `${row.crop}, ${row.region}`;
      const start = find(days, /\/(?:sow-outdoors|set-out|plant)\/1$|overwinter\/plant$/);
      return [
        ...(row.plant_from
          ? [{ name: `${name}, ${row.plant_from}`, holds: hasBegun(start, row.plant_to ?? "") }]
          : []),
        ...(row.start_indoors
          ? [
              {
                name: `${name}, indoors`,
                holds: hasBegun(find(days, /sow-indoors\/1$/), row.start_indoors),
              },
            ]
          : []),
        ...(row.harvest === "Mar" ? [{ name: `${name}`, holds: isHarvested(days) }] : []),
      ];
    });
    expect(held.length).toBeGreaterThanOrEqual(ROWS.length);
    expect(missed(held)).toEqual(missesOf(FILE));
  });
});
