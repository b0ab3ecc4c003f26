import { oneOf } from "../garden/plan/random.ts";

/** Names that stand in no word of the trade, so that they are found wherever they leak. */
export const CANARIES = ["Zyxwulf", "Qorvane", "Xanthippa"] as const;

const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
const CROPS = [
  ["potato", ["18 plants", "sprouted first"]],
  ["carrot", ["3 rows", "under a board"]],
  ["beet", ["2 rows", "without thinning"]],
  ["lettuce", ["2 rows", "every 14 days, 3 times"]],
  ["tomato", ["6 plants", "from seed indoors"]],
  ["garlic", ["60 cloves", "plant this October"]],
  ["radish", ["1 row", "every 10 days, 4 times"]],
  ["turnip", ["2 rows"]],
  ["spring cabbage", ["12 plants", "from seed outdoors"]],
  ["spinach", ["2 rows", "every 10 days"]],
  ["pea", ["2 rows", "every 14 days, 2 times"]],
  ["bush bean", ["10 ft", "every 14 days, 3 times"]],
  ["cucumber", ["4 plants", "from seed indoors"]],
  ["sweetcorn", ["4 rows"]],
  ["parsnip", ["1 row", "under a board"]],
  ["parsley", ["6 plants", "from seed indoors"]],
] as const;
const VARIETIES = [
  "early red",
  "the long one from last year's swap",
  "no name",
  "Danvers",
] as const;
const BEDS = [
  ["Bags", "6 grow bags, 16 in across, 14 in high"],
  ["Root bed", "12 x 4 ft"],
  ["The bed behind the old greenhouse", "24 x 4 ft"],
  ["South bed", "12 x 4 ft"],
] as const;
const SAID = ["carrots sown", "carrots up", "beets up", "planted potatoes", "soil 58 °F", "rain"];

type Roll = () => number;
const upTo = (most: number, roll: Roll) => Math.floor(roll() * (most + 1));

function person(name: string, roll: Roll): string {
  const from = 7 + upTo(10, roll);
  const gardens =
    roll() < 0.8 ? `gardens: ${oneOf(DAYS, roll)} ${from}-${from + 1 + upTo(3, roll)}` : null;
  const home =
    roll() < 0.7
      ? `home: ${oneOf(["every day", "weekends", "weekdays from 17:30 and weekends", "every day but Tue"], roll)}`
      : null;
  const out = roll() < 0.3 ? "leave out: lifting" : null;
  const said = [gardens, home, out].filter((each) => each !== null);
  return `  ${name}: { ${said.join(", ")} }\n`;
}

function bed([name, size]: (typeof BEDS)[number], taken: Set<string>, roll: Roll): string {
  const crops: string[] = [];
  for (const [crop, words] of CROPS) {
    const variety = roll() < 0.4 ? oneOf(VARIETIES, roll) : null;
    const key = `${crop} ${variety ?? ""}`;
    if (roll() < 0.7 || taken.has(key)) continue;
    taken.add(key);
    const said = words.filter((_, i) => i === 0 || roll() < 0.7);
    crops.push(
      `      - ${crop}: ${[variety, ...said].filter((each) => each !== null).join(", ")}\n`,
    );
  }
  return crops.length === 0 ? "" : `  ${name}:\n    is: ${size}\n    crops:\n${crops.join("")}`;
}

/** A sound plan's text, with people named by CANARIES, absences, a diary, and beds of all the crops. */
export function anyPlan(roll: Roll): string {
  const people = CANARIES.filter(() => roll() < 0.7);
  const away = people
    .filter(() => roll() < 0.6)
    .map(
      (name) =>
        `  - ${name}, ${1 + upTo(9, roll)} to ${12 + upTo(16, roll)} ${oneOf(["May", "Jun", "Jul"], roll)}\n`,
    );
  const taken = new Set<string>();
  const beds = BEDS.map((each) => bed(each, taken, roll)).join("");
  const diary = SAID.filter(() => roll() < 0.3).map(
    (line) =>
      `  - ${1 + upTo(27, roll)} May: ${line}${people[0] && roll() < 0.5 ? ` by ${people[0]}` : ""}\n`,
  );
  const measures = oneOf(["metric", "inches and °F"] as const, roll);
  const weather =
    measures === "metric"
      ? "low: [-6, -4, 0, 3, 6, 10, 13, 12, 8, 4, 0, -4]\n    high: [3, 5, 9, 14, 18, 22, 24, 24, 19, 14, 8, 4]"
      : "low: [11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]\n    high: [30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]";
  return [
    "garden: Any\nyear: 2027\n",
    `measures: ${measures}
`,
    `place:\n  clock: ${oneOf(["America/Denver", "Europe/Berlin", "UTC"], roll)}\n  latitude: 46.6\n`,
    `  last frost: ${oneOf(["20 Apr, 6 May, 21 May", "about 6 May", "about 2 Apr"], roll)}\n  first frost: about 2 Oct\n`,
    roll() < 0.5 ? `  weather:\n    ${weather}\n` : "",
    people.length > 0 ? `people:\n${people.map((name) => person(name, roll)).join("")}` : "",
    away.length > 0 ? `away:\n${away.join("")}` : "",
    beds === "" ? "crops:\n  - carrot\n" : `beds:\n${beds}`,
    diary.length > 0 ? `diary:\n${diary.join("")}` : "",
    roll() < 0.4 ? "assume: open\n" : "",
  ].join("");
}
