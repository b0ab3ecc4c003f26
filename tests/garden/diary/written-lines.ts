import { readFileSync } from "node:fs";
import { sayDay } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { beginsOf } from "../../../src/garden/diary/deeds.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { plantingsNamed } from "../../../src/garden/model/named.ts";
import type { DiaryLine, Plan } from "../../../src/garden/model/plan.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";

/** A line as written and what its writer meant by it, by the garden that it was written for. */
export type WrittenLines = Readonly<
  Record<string, readonly (readonly [string, readonly string[]])[]>
>;

/** How a line was read: with all that is meant and nothing else, with less, or with something else. */
export type Reading = "understood" | "kept as a note" | "misunderstood";

/** A line beside its meaning and what was understood. */
export type ReadLine = {
  readonly line: DiaryLine;
  readonly means: readonly string[];
  readonly reading: Reading;
  readonly said: string;
};

/** The garden in that file with these lines as its diary, in their order. */
function gardenWith(file: URL, garden: string, lines: readonly string[]): Plan {
  const plan = readFileSync(file, "utf8").replace(/^diary:\n(?: .*\n)*/m, "");
  const diary = lines.map((line) => `  - ${line}\n`).join("");
  const result = readPlan(`${plan}diary:\n${diary}`, { garden, file: `${garden}.yaml` }, PRACTICES);
  if (!result.plan) throw new Error(JSON.stringify(result.problems));
  return result.plan;
}

/** What a lines' file calls a job: its practice and step. Sowing and planting are one: the planting is begun. */
const JOBS: Readonly<Record<string, string>> = {
  sow: "begin",
  plant: "begin",
  "set-out": "set out",
  "pot-on": "pot on",
  "board-off": "board off",
  "drain-lines": "drain the lines",
  tie: "stake and train",
  stake: "stake and train",
  support: "stake and train support",
  harden: "harden off",
  scapes: "overwinter stalks",
  mulch: "overwinter mulch",
  cover: "cover on",
  uncover: "cover off",
  lift: "harvest",
  clear: "harvest last",
  stop: "harvest last",
  chit: "things to have sprout",
  order: "things to have order",
  pinch: "stop the tops",
  store: "cure and store",
  close: "close the bed",
  shade: "heat",
  blanch: "fill in and blanch",
  prune: "yearly prune",
  renew: "yearly",
};

/** The planting or bed that a file's writer means by a name; what is none is as it was written. */
function named(name: string, plan: Plan): string {
  const [planting, ...more] = plantingsNamed(name, plan.plantings);
  if (planting && more.length === 0) return planting.key;
  const bed = plan.beds.find((each) => each.name === name);
  return bed ? `${plan.year}/bed/${bed.key}` : name;
}

/** A meaning in a file as the observations that say it, each in the words of `sayObservation`. */
function meant(meaning: string, plan: Plan): readonly string[] {
  const when = / (?:on|until) \d+ \w+$/.exec(meaning)?.[0] ?? "";
  const [kind = "", ...rest] = meaning.slice(0, meaning.length - when.length).split(" ");
  const word = kind === "not" || kind === "put" ? `${kind} ${rest.shift()}` : kind;
  if (word === "note") return [];
  if (word === "resown")
    return [
      `failed ${named(rest.join(" "), plan)}${when}`,
      `begin ${named(rest.join(" "), plan)}${when}`,
    ];
  if (["failed", "lost", "bought"].includes(word))
    return [`${word} ${named(rest.join(" "), plan)}${when}`];
  if (word === "left-out") return [`lost ${named(rest.join(" "), plan)}`];
  if (word === "moved") {
    const [, name = "", bed = ""] =
      /^(.+) to (.+)$/.exec(rest.join(" ")) ?? /^(\S+) (.+)$/.exec(rest.join(" ")) ?? [];
    return [`moved ${named(name, plan)} ${bed}`];
  }
  if (word === "measured" && rest[0] === "tall")
    return [`measured tall ${named(rest.slice(1, -1).join(" "), plan)} ${rest.at(-1)}${when}`];
  if (word === "measured") return [`measured ${rest.join(" ")}${when}`];
  const [job = "", ...name] = rest;
  const key = named(name.join(" "), plan);
  if (word === "left") return [`left ${JOBS[job] ?? job} ${key}${when}`];
  if (word === "seen") return [job === "ripe" ? `harvest ${key}${when}` : `${job} ${key}${when}`];
  const not = word === "done" ? "" : "not yet ";
  const part = word === "part" ? " in part" : "";
  return [`${not}${JOBS[job] ?? job} ${key}${part}${when}`];
}

/** An observation in the words of the file, with its day where that is not its line's. */
function sayObservation(observation: Observation, line: DiaryLine, plan: Plan): string {
  const when = observation.day === line.day ? "" : ` on ${sayDay(observation.day)}`;
  return `${wordsOf(observation, plan)}${when}`;
}

function jobOf({
  practice,
  step,
}: {
  readonly practice: string;
  readonly step: string | null;
}): string {
  return beginsOf({ practice, step }, PRACTICES)
    ? "begin"
    : [practice, step].filter(Boolean).join(" ");
}

const STAGE = { up: "up", flower: "flower", "first ripe": "harvest", anything: "up" } as const;

function wordsOf(observation: Observation, plan: Plan): string {
  switch (observation.kind) {
    case "done":
      return `${jobOf(observation)} ${observation.planting.replace(/^\d+\/garden$/, "garden")}`.replace(
        /^(drain the lines) garden/,
        "$1 ",
      );
    case "seen":
      return `${STAGE[observation.stage]} ${observation.planting}`;
    case "not yet": {
      const { of, until, planting, partly } = observation;
      const job = "stage" in of ? STAGE[of.stage] : jobOf(of);
      return `not yet ${job} ${planting}${partly ? " in part" : ""}${until === undefined ? "" : ` until ${sayDay(until)}`}`;
    }
    case "left":
      return `left ${observation.practice} ${observation.planting}`;
    case "measured": {
      const { value, what } = observation;
      const bed = plan.beds.find(({ key }) => key === observation.bed)?.name;
      const where = bed ?? ("planting" in observation ? observation.planting : null);
      return ["measured", what === "height" ? "tall" : what, where, value.said?.value ?? value.si]
        .filter((word) => word !== null)
        .join(" ");
    }
    case "moved":
      return `moved ${observation.planting} ${plan.beds.find(({ key }) => key === observation.bed)?.name}`;
    default:
      return "planting" in observation
        ? `${observation.kind} ${observation.planting}`
        : observation.kind;
  }
}

function readLine(line: DiaryLine, means: readonly string[], plan: Plan): ReadLine {
  const said = parseDiary([line], [plan], PRACTICES)
    .filter(({ kind }) => kind !== "note")
    .map((each) => sayObservation(each, line, plan).trim());
  const expected = means
    .flatMap((meaning) => meant(meaning, plan))
    .map((each) => each.replace(/ drain-lines$/, "").trim());
  const wrong = said.some((each) => !expected.includes(each));
  const whole = expected.every((each) => said.includes(each));
  const reading = wrong ? "misunderstood" : whole ? "understood" : "kept as a note";
  return { line, means, reading, said: said.join(" | ") };
}

/** Every line of a file as it is read in its garden; `gardens` gives the file of a garden's plan. */
export function readWrittenLines(
  lines: WrittenLines,
  gardens: (garden: string) => URL,
): readonly ReadLine[] {
  return Object.entries(lines).flatMap(([garden, written]) => {
    const plan = gardenWith(
      gardens(garden),
      garden,
      written.map(([line]) => line),
    );
    return plan.diary.map((line, i) => readLine(line, written[i]?.[1] ?? [], plan));
  });
}
