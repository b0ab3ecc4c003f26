import { type Day, sayDay } from "../days/day.ts";
import type { Fact } from "../diary/fact.ts";
import { settle } from "../diary/settle.ts";
import { sayPlanting } from "../diary/subjects.ts";
import { lineByLine } from "../diary/understand.ts";
import type { Plan } from "../plan/plan.ts";
import { sayQuantity } from "../quantities/say.ts";
import { atMost, type Call, type Command, type Exit, load, today } from "./call.ts";

function run(call: Call): Exit {
  atMost(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { plans } = loaded.garden;
  const { day } = today(call, loaded);
  const read = lineByLine(plans);
  const settled = settle(
    read.flatMap(({ facts }) => facts),
    plans,
  );
  const asked = loaded.asked.map(({ file }) => file);
  for (const { line, facts } of read.filter(({ line: { at } }) => asked.includes(at.file))) {
    call.terminal.out(`${sayDay(line.day, true)}: ${line.text}\n`);
    for (const fact of facts)
      for (const said of told(fact, plans, { day, settled })) call.terminal.out(`  ${said}\n`);
  }
  if (read.length === 0) call.terminal.out("Nothing is written down yet.\n");
  return 0;
}

type Beside = {
  readonly day: Day;
  readonly settled: ReturnType<typeof settle>;
};

/** What a fact was understood as, then what has to be said of it. */
function told(fact: Fact, plans: readonly Plan[], { day, settled }: Beside): readonly string[] {
  const remarks = settled.remarks.filter((remark) => remark.fact === fact).map(({ is }) => is);
  const ahead = fact.day > day ? ["is dated a day still to come"] : [];
  return [sayFact(fact, plans), ...[...remarks, ...ahead].map((is) => `  ${is}`)];
}

/** `Carrots: up`, in the plan's own names. */
function sayFact(fact: Fact, plans: readonly Plan[]): string {
  const of = (key: string) => {
    const planting = plans.flatMap(({ plantings }) => plantings).find((each) => each.key === key);
    return planting ? sayPlanting(planting) : key;
  };
  const bed = (key: string) =>
    plans.flatMap(({ beds }) => beds).find((each) => each.key === key)?.name ?? key;
  const nth = (sowing: number | null) => (sowing === null ? "" : `, sowing ${sowing}`);
  const job = (practice: string, step: string | null) =>
    step === null || /^\d+$/.test(step) ? practice : `${practice} (${step})`;
  switch (fact.kind) {
    case "done": {
      const by = plans.flatMap(({ people }) => people).find(({ key }) => key === fact.by)?.name;
      return `done: ${job(fact.practice, fact.step)}, ${of(fact.planting)}${by ? `, by ${by}` : ""}`;
    }
    case "seen":
      return `seen: ${of(fact.planting)} ${fact.stage}${nth(fact.sowing)}`;
    case "not yet":
      return `not yet: ${of(fact.planting)}, ${"stage" in fact.of ? fact.of.stage : job(fact.of.practice, fact.of.step)}${nth(fact.sowing)}`;
    case "left":
      return `left this year: ${fact.practice}, ${of(fact.planting)}`;
    case "failed":
      return `failed, to be begun again: ${of(fact.planting)}${nth(fact.sowing)}`;
    case "lost":
      return `lost: ${of(fact.planting)}${nth(fact.sowing)}`;
    case "moved":
      return `moved: ${of(fact.planting)} to ${bed(fact.bed)}`;
    case "measured":
      return sayMeasured(fact, plans, { of, bed });
    case "undone":
      return `taken back: ${sayFact(fact.what, plans)}`;
    case "note":
      return fact.why === null ? "kept as a note" : `kept as a note, since ${fact.why}`;
  }
}

type Names = { readonly of: (key: string) => string; readonly bed: (key: string) => string };

function sayMeasured(
  fact: Extract<Fact, { readonly kind: "measured" }>,
  plans: readonly Plan[],
  { of, bed }: Names,
): string {
  const value = sayQuantity(fact.value, plans[plans.length - 1]?.measures ?? "metric");
  if (fact.what === "height") return `measured: ${of(fact.planting)} ${value} tall`;
  const where = fact.bed === null ? "" : ` in ${bed(fact.bed)}`;
  return `measured: ${fact.what}${where} ${value}`;
}

/** `diary PLAN`: each line of the diary and what was understood of it, with what no longer holds or cannot be so. */
export const DIARY: Command = { takes: ["on"], run };
