import type { Problem } from "../../base/index.ts";
import { byteLength } from "../store/bytes.ts";
import { answersIn, linesForPlan } from "../store/diary.ts";
import { otherPlans } from "../store/gardens.ts";
import {
  type PlanTexts,
  type PlanToStore,
  plansInForce,
  type SavedPlan,
  savedPlan,
  savePlan,
} from "../store/plans.ts";
import { bytesInForce, MOST_GARDEN_BYTES } from "../store/thinning.ts";
import { type GardenContext, writeAndRebuild } from "./garden-context.ts";
import { sayYears, withYears } from "./place-years.ts";

const KIB = 1024;
/** Bytes of a plan, and of the files beside it together. */
const MOST = 256 * KIB;
/** Files beside a plan, and letters of the name of one. Source: house rule; a garden has its weather and some calendars. */
const MOST_BESIDE = { files: 40, letters: 100 } as const;
/** Years of one garden. Source: house rule. */
const MOST_YEARS = 50;
/** Bytes of the JSON or the form that carries them, which write some characters longer. */
export const MOST_CARRIED = 1024 * KIB;

/** What a page says over a text with something wrong in it. */
export const NOT_SAVED_YET =
  "Not saved yet: something has to be put right first. Nothing of what you wrote is lost.";

/** One year's plan of a garden. */
export type PlanKey = { readonly garden: string; readonly year: number };

/** What is to be saved, over which version, and the address it came to. */
export type PlanToSave = PlanKey &
  Pick<PlanToStore, "text" | "file" | "beside" | "published" | "base" | "first" | "origin">;

/**
 * What became of it. `saved` as that version, with its doubts; else nothing was stored: it has problems, it is too long, or
 * another version is in force than the one it started from (null: none is, or the garden was deleted for good).
 */
export type SaveOutcome =
  | { readonly kind: "saved"; readonly version: number; readonly problems: readonly Problem[] }
  | { readonly kind: "problems"; readonly problems: readonly Problem[] }
  | { readonly kind: "too long" }
  | { readonly kind: "another"; readonly inForce: (SavedPlan & PlanTexts) | null };

/**
 * Saves a plan that has no problem over the version it started from, 0 for a year's first. The garden is made where there is
 * none. What follows from it is built behind the answer.
 */
export async function saveText(context: GardenContext, wanted: PlanToSave): Promise<SaveOutcome> {
  const { sql, code, now } = context;
  const { garden, year, text } = wanted;
  if (isTooLong(wanted)) return { kind: "too long" };
  const saved = plansInForce(sql);
  const many = tooManyIn(wanted, saved) ?? tooLarge(sql, wanted);
  if (many !== null) return { kind: "problems", problems: [many] };
  const { checkPlan } = await context.engine();
  const others = otherPlans(sql, { plans: saved }, year);
  const { file, fault } = await withYears(context, { ...wanted, text, garden });
  const beside = file.beside ?? {};
  const checked = checkPlan(
    { text, garden, file: file.file, beside },
    others,
    linesForPlan(others, answersIn(sql)),
  );
  const { plan } = checked;
  const problems = sayYears(checked.problems, fault);
  if (plan === null || problems.some(({ weight }) => weight === "problem"))
    return { kind: "problems", problems };
  if (plan.year !== year)
    return { kind: "problems", problems: [wrongYear(wanted.file, plan.year, year)] };
  const whole = { ...wanted, beside, plan, readBy: code, savedAt: now() };
  const version = writeAndRebuild(
    context,
    () => savePlan(sql, whole),
    (saved) => saved !== null,
  );
  if (version === null) return { kind: "another", inForce: savedPlan(sql, year) };
  return { kind: "saved", version, problems };
}

/** What a garden has too many of, in numbers; null where it has not. */
function tooManyIn(
  { file, beside, year }: PlanToSave,
  saved: readonly Pick<SavedPlan, "year">[],
): Problem | null {
  const names = Object.keys(beside);
  const say = (is: string, shouldBe: string): Problem => {
    return {
      code: "too-many-files",
      weight: "problem",
      at: { file, line: 1, column: 1 },
      is,
      shouldBe,
    };
  };
  if (names.length > MOST_BESIDE.files)
    return say(`${names.length} files lie beside this plan`, `Keep at most ${MOST_BESIDE.files}`);
  if (names.some((name) => name.length > MOST_BESIDE.letters))
    return say(
      "a file beside this plan has a very long name",
      `Name it with at most ${MOST_BESIDE.letters} letters`,
    );
  const isNew = saved.every((each) => each.year !== year);
  return isNew && saved.length >= MOST_YEARS
    ? say(
        `this garden has ${saved.length} years already`,
        "Take the old ones with you and begin another garden",
      )
    : null;
}

/** That the plans in force would come to more than a garden may have, in numbers; null where they do not. */
function tooLarge(
  sql: GardenContext["sql"],
  { year, file, text, beside }: PlanToSave,
): Problem | null {
  const bytes = bytesInForce(sql, year) + bytesOf([text, JSON.stringify(beside)]);
  if (bytes <= MOST_GARDEN_BYTES) return null;
  const [is, most] = [bytes, MOST_GARDEN_BYTES].map((each) => Math.ceil(each / (1024 * KIB)));
  return {
    code: "too-many-files",
    weight: "problem",
    at: { file, line: 1, column: 1 },
    is: `all plans of this garden, with the files beside them, come to ${is} MiB`,
    shouldBe: `Keep them within ${most} MiB`,
  };
}

function wrongYear(file: string, is: number, year: number): Problem {
  return {
    code: "wrong-year",
    weight: "problem",
    at: { file, line: 1, column: 1 },
    is: `this plan is for ${is}`,
    shouldBe: `the plan for ${year} goes here`,
  };
}

function isTooLong({ text, beside }: PlanToSave): boolean {
  return bytesOf([text]) > MOST || bytesOf(Object.values(beside)) > MOST;
}

function bytesOf(texts: readonly string[]): number {
  return texts.reduce((sum, text) => sum + byteLength(text), 0);
}
