import type { AnswerProblem, FirstCheck } from "../../app/index.ts";
import { dayAt, isoOf } from "../../base/index.ts";
import type { Engine } from "../edge/engine.ts";
import { answersOf, type FirstForm, type FormStep, STEPS, stepOf } from "./first-form.ts";
import type { LinkRequest } from "./garden-request.ts";
import type { FieldError } from "./pages/form-fields.tsx";

/** The year of the garden's next spring, as one supposes it in autumn, and the years that a first plan may be of. */
export function yearsAt(now: number): {
  readonly next: number;
  readonly from: number;
  readonly to: number;
} {
  const [year = 0, month = 0] = isoOf(dayAt(now, "UTC")).split("-").map(Number);
  return { next: month >= 9 ? year + 1 : year, from: year - 1, to: year + 1 };
}

/** What a form comes to: a plan of its answers, with what is wrong and what is doubtful in them. */
export type FormCheck = Omit<FirstCheck, "problems"> & {
  readonly wrong: readonly FieldError[];
  readonly doubts: readonly FieldError[];
};

/** Checks a form by the reader of all plans. `doubts`: those too that cost a build. */
export async function checkForm(
  { context, link }: LinkRequest,
  form: FirstForm,
  doubts: boolean,
): Promise<FormCheck> {
  const engine = await context.engine();
  const { checkFirstPlan, guessedFrosts } = engine;
  const guessed = form.way === "numbers" ? guessedFrosts(form.answers, form.south) : null;
  const answers = answersOf(form, guessed);
  const years = yearsAt(context.now());
  const request = { garden: link.garden, years, beside: besideOf(engine, form), doubts };
  const { problems, ...rest } = checkFirstPlan(answers, request);
  const found = [...problems.map((problem) => asAsked(problem, form)), ...cropsMissing(form)];
  const of = (weight: AnswerProblem["weight"]) =>
    onceEach(found.filter((problem) => problem.weight === weight));
  return { ...rest, wrong: of("problem"), doubts: of("doubt") };
}

/** The files beside a first plan: the years behind its place, once they were found. */
export function besideOf(
  { yearsFile }: Pick<Engine, "yearsFile">,
  { years }: FirstForm,
): Readonly<Record<string, string>> {
  return years === "" ? {} : { [yearsFile]: years };
}

/** Frost dates that nobody was asked for are told where what they come from was asked. */
function asAsked(problem: AnswerProblem, { way, answers }: FirstForm): AnswerProblem {
  if (way === "dates" || !["lastFrost", "firstFrost"].includes(problem.field)) return problem;
  if (way === "place") return { ...problem, field: "where" };
  const field = answers.hottest === "" || answers.coldest !== "" ? "hottest" : "coldest";
  return { ...problem, field, says: "Write both temperatures, such as 28 °C and -8 °C." };
}

function cropsMissing({ answers }: FirstForm): readonly AnswerProblem[] {
  if (answers.crops.length > 0) return [];
  return [{ field: "crop", weight: "problem", says: "Tick one crop at least." }];
}

function onceEach(errors: readonly FieldError[]): readonly FieldError[] {
  const key = ({ field, says }: FieldError) => `${field} ${says}`;
  const each = errors.map(({ field, says }) => ({ field, says }));
  return [...new Map(each.map((error) => [key(error), error])).values()];
}

/** What is wrong on a page, by what is wrong in all. */
export function wrongOn(step: FormStep, wrong: readonly FieldError[]): readonly FieldError[] {
  return wrong.filter(({ field }) => stepOf(field) === step);
}

/** The first page before another that has something wrong on it; null: none has. */
export function firstWrongBefore(step: FormStep, wrong: readonly FieldError[]): FormStep | null {
  const before = STEPS.slice(0, STEPS.indexOf(step));
  return before.find((each) => wrongOn(each, wrong).length > 0) ?? null;
}
