import type { PlanText, Problem } from "../../app/index.ts";
import { countPlace } from "../store/writes.ts";
import { cellName, roundedPlace } from "../weather/terms.ts";
import type { GardenContext } from "./garden-context.ts";

/** A plan's text with the files beside it; `fault` is why the years behind its place could not be had; null: they are there, or not asked for. */
export type PlanWithYears = { readonly file: PlanText; readonly fault: string | null };

/**
 * The plan with the years behind its place beside it, where it asks for them and has them not. Its cell asks the service once for all
 * gardens there; whoever saves waits for that, and nobody else does.
 */
export async function withYears(
  { sql, now, engine, askYears }: GardenContext,
  file: PlanText,
): Promise<PlanWithYears> {
  const { yearsWanted, yearsFile } = await engine();
  const wanted = yearsWanted(file);
  if (wanted === null) return { file, fault: null };
  if (askYears === null) return { file, fault: "nobody can be asked here" };
  if (!countPlace(sql, now()))
    return { file, fault: "this garden has asked for many places today" };
  const place = roundedPlace(wanted);
  try {
    const { file: years, fault } = await askYears(cellName("Open-Meteo", place), place);
    if (years === null) return { file, fault };
    return { file: { ...file, beside: { ...file.beside, [yearsFile]: years } }, fault: null };
  } catch (error) {
    // No place stands in a log.
    console.error(
      `garden ${file.garden}: the years behind its place could not be asked for:`,
      error,
    );
    return { file, fault: "not reached" };
  }
}

/** Problems as they are told in a browser: of years that were asked for, why they are not there and what can be done. */
export function sayYears(problems: readonly Problem[], fault: string | null): readonly Problem[] {
  return problems.map((problem) =>
    problem.code === "years-missing" || problem.code === "years-awaited"
      ? { ...problem, ...(fault === null ? WHEN_SAVED : notHad(problem, fault)) }
      : problem,
  );
}

/** While a text is being written nobody is asked. */
const WHEN_SAVED = {
  weight: "doubt",
  is: "The years behind this place are asked for when you save",
  shouldBe: "Nothing is to be done",
} as const;

function notHad({ code }: Problem, fault: string): Pick<Problem, "is" | "shouldBe"> {
  const own = code === "years-missing" ? ", or write last frost: and first frost: yourself" : "";
  return {
    is: `Open-Meteo could not be asked for the years behind this place: ${fault}`,
    shouldBe: `Save again later${own}`,
  };
}
