import type { Day } from "../../base/days/day.ts";
import { sayQuantity } from "../../base/quantities/say.ts";
import type { Fact } from "../../garden/diary/fact.ts";
import { settle } from "../../garden/diary/settle.ts";
import { sayPlanting } from "../../garden/diary/subjects.ts";
import { lineByLine } from "../../garden/diary/understand.ts";
import type { DiaryLine, Plan } from "../../garden/model/plan.ts";

/** A line of the diary and what was understood of it, each with what no longer holds or cannot be so. */
export type LineTold = {
  readonly line: DiaryLine;
  readonly understood: readonly FactTold[];
};

/** One thing a line says, in the plan's own names, and what has to be said of it. */
export type FactTold = { readonly is: string; readonly but: readonly string[] };

/** Every line of a garden's diaries in the order they are written, as of a day. `plans` are all its years. */
export function diaryTold(plans: readonly Plan[], today: Day): readonly LineTold[] {
  const read = lineByLine(plans);
  const { remarks } = settle(
    read.flatMap(({ facts }) => facts),
    plans,
  );
  const butOf = (fact: Fact) => [
    ...remarks.filter((remark) => remark.fact === fact).map(({ is }) => is),
    ...(fact.day > today ? ["is dated a day still to come"] : []),
  ];
  return read.map(({ line, facts }) => ({
    line,
    understood: facts.map((fact) => ({ is: sayFact(fact, plans), but: butOf(fact) })),
  }));
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
