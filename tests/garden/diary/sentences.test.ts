import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse as parseYaml } from "yaml";
import { sayDay } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { beginsOf } from "../../../src/garden/diary/deeds.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { plantingsNamed } from "../../../src/garden/model/named.ts";
import type { DiaryLine, Plan } from "../../../src/garden/model/plan.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";

/** A line as written and what its writer meant by it, by the gardens of tests/golden/gardens. */
type Sentences = Readonly<Record<string, readonly (readonly [string, readonly string[]])[]>>;

const SENTENCES: Sentences = parseYaml(
  readFileSync(new URL("sentences.yaml", import.meta.url), "utf8"),
);

/** The garden with these lines as its diary, in their order. */
function gardenWith(garden: string, lines: readonly string[]): Plan {
  const file = new URL(`../../golden/gardens/${garden}.yaml`, import.meta.url);
  const plan = readFileSync(file, "utf8").replace(/^diary:\n(?: .*\n)*/m, "");
  const diary = lines.map((line) => `  - ${line}\n`).join("");
  const result = readPlan(`${plan}diary:\n${diary}`, { garden, file: `${garden}.yaml` }, PRACTICES);
  if (!result.plan) throw new Error(JSON.stringify(result.problems));
  return result.plan;
}

/** What the sentences' file calls a job: its practice and step. Sowing and planting are one: the planting is begun. */
const JOBS: Readonly<Record<string, string>> = {
  sow: "begin",
  plant: "begin",
  "set-out": "set out",
  "pot-on": "pot on",
  "board-off": "board off",
  "drain-lines": "drain the lines",
  tie: "stake and train",
  stake: "stake and train",
  harden: "harden off",
  scapes: "overwinter stalks",
  cover: "cover on",
  uncover: "cover off",
  lift: "harvest",
  clear: "harvest last",
  stop: "harvest last",
  chit: "things to have sprout",
  pinch: "stop the tops",
};

/** The planting that the file's writer means by a name; what is none is as it was written. */
function named(name: string, plan: Plan): string {
  const [planting, ...more] = plantingsNamed(name, plan.plantings);
  return planting && more.length === 0 ? planting.key : name;
}

/** A meaning in the file as the observations that say it, each in the words of `sayObservation`. */
function meant(meaning: string, plan: Plan): readonly string[] {
  const when = / (?:on|until) \d+ \w+$/.exec(meaning)?.[0] ?? "";
  const [kind = "", ...rest] = meaning.slice(0, meaning.length - when.length).split(" ");
  const word = kind === "not" || kind === "put" ? `${kind} ${rest.shift()}` : kind;
  if (word === "note") return [];
  if (word === "resown")
    return [`failed ${named(rest.join(" "), plan)}`, `begin ${named(rest.join(" "), plan)}`];
  if (["failed", "lost", "bought"].includes(word))
    return [`${word} ${named(rest.join(" "), plan)}${when}`];
  if (word === "left-out") return [`lost ${named(rest.join(" "), plan)}`];
  if (word === "moved") return [`moved ${named(rest[0] ?? "", plan)} ${rest.slice(1).join(" ")}`];
  if (word === "measured" && rest[0] === "tall")
    return [`measured tall ${named(rest[1] ?? "", plan)} ${rest[2]}`];
  if (word === "measured") return [`measured ${rest.join(" ")}${when}`];
  const [job = "", ...name] = rest;
  const key = named(name.join(" "), plan);
  if (word === "seen") return [job === "ripe" ? `harvest ${key}${when}` : `${job} ${key}${when}`];
  const not = word === "done" ? "" : "not yet ";
  return [`${not}${JOBS[job] ?? job} ${key}${when}`];
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
      const { of, until, planting } = observation;
      const job = "stage" in of ? STAGE[of.stage] : jobOf(of);
      return `not yet ${job} ${planting}${until === undefined ? "" : ` until ${sayDay(until)}`}`;
    }
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

/** How a line was read: with all that is meant and nothing else, with less, or with something else. */
type Reading = "understood" | "kept as a note" | "misunderstood";

function readingOf(
  line: DiaryLine,
  meanings: readonly string[],
  plan: Plan,
): { reading: Reading; said: string } {
  const said = parseDiary([line], [plan], PRACTICES)
    .filter(({ kind }) => kind !== "note")
    .map((each) => sayObservation(each, line, plan).trim());
  const expected = meanings
    .flatMap((meaning) => meant(meaning, plan))
    .map((each) => each.replace(/ drain-lines$/, "").trim());
  const wrong = said.some((each) => !expected.includes(each));
  const whole = expected.every((each) => said.includes(each));
  return {
    reading: wrong ? "misunderstood" : whole ? "understood" : "kept as a note",
    said: said.join(" | "),
  };
}

describe("two hundred lines of five gardens", () => {
  const readings = Object.entries(SENTENCES).flatMap(([garden, lines]) => {
    const plan = gardenWith(
      garden,
      lines.map(([line]) => line),
    );
    return plan.diary.map((line, i) => ({
      line,
      means: lines[i]?.[1] ?? [],
      ...readingOf(line, lines[i]?.[1] ?? [], plan),
    }));
  });
  const those = (wanted: Reading) => readings.filter(({ reading }) => reading === wanted);
  const written = Object.values(SENTENCES).flat().length;

  it("are all read", () => {
    expect(written).toBeGreaterThanOrEqual(200);
    expect(readings).toHaveLength(written);
  });

  it("are never misunderstood", () => {
    expect(
      those("misunderstood").map(
        ({ line, means, said }) => `${line.text} => ${said}, and not ${means.join(" | ")}`,
      ),
    ).toEqual([]);
  });

  it("are understood, nine of ten at least", () => {
    const notes = those("kept as a note");
    console.log(
      [
        `${written} lines: ${those("understood").length} understood, ${notes.length} kept as notes, ${those("misunderstood").length} misunderstood`,
        ...notes.map(({ line, said }) => `  ${line.text}${said === "" ? "" : ` => ${said}`}`),
      ].join("\n"),
    );
    expect(those("understood").length / written).toBeGreaterThanOrEqual(0.9);
  });
});
