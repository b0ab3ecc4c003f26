import { dayAt, type Problem, sayAdvice, sayDay } from "../../base/index.ts";
import { logFailure } from "../log.ts";
import { answersIn, linesForPlan } from "../store/diary.ts";
import { otherPlans, zoneOf } from "../store/gardens.ts";
import {
  type PlanTexts,
  planVersion,
  planVersions,
  type SavedPlan,
  savedPlan,
} from "../store/plans.ts";
import { json, notFound, pageResponse, plain, SCRIPTED_WITH_DRAWING } from "./answers.ts";
import { formOf } from "./body.ts";
import { frameOf, type GardenRequest } from "./garden-request.ts";
import { type PlanNotice, type PlanPageProps, planPage, versionPage } from "./pages/plan.tsx";
import { sayYears } from "./place-years.ts";
import { MOST_CARRIED, NOT_SAVED_YET, type SaveOutcome, saveText } from "./saving.ts";

/** The newest year's plan, where the bare path leads. */
export function answerNewest({ stored, base }: GardenRequest): Response {
  const year = stored.plans.at(-1)?.year;
  return plain(303, "See the newest plan.\n", { Location: `${base}plan/${year}` });
}

/** A year's plan as a page, or what its form sends saved; a year behind the newest begins with that one's text. 404 for any other year. */
export async function answerPlanPage(
  gardenRequest: GardenRequest,
  said: string,
): Promise<Response> {
  const at = await startingAt(gardenRequest, Number(said));
  if (at === null) return notFound();
  if (gardenRequest.request.method === "POST") return saveForm(gardenRequest, at);
  const version = Number(new URL(gardenRequest.request.url).searchParams.get("saved"));
  const word: PlanNotice =
    at.version === 0
      ? { kind: "not begun", from: at.year - 1 }
      : version === at.version
        ? { kind: "saved", version }
        : { kind: "nothing" };
  const problems = await problemsShown(gardenRequest, at);
  return show(gardenRequest, at, { status: 200, word, problems, base: at.version, text: at.text });
}

/** What is wrong with a text that is stored; nothing where that can't be said, since that it is stored must be. */
async function problemsShown(gardenRequest: GardenRequest, at: PlanDraft) {
  try {
    return await problemsIn(gardenRequest, at, at.text);
  } catch (error) {
    logFailure("checking a stored plan", error, gardenRequest.stored.id);
    return [];
  }
}

/** A year's plan as it stands: version 0 for the year that is not written yet. */
export type PlanDraft = Pick<SavedPlan, "year" | "version" | "file"> & PlanTexts;

/** A year's plan as it stands: what is in force, or as it would begin; null where there is none to begin from. */
export async function startingAt(
  { context, stored }: GardenRequest,
  year: number,
): Promise<PlanDraft | null> {
  const saved = savedPlan(context.sql, year);
  if (saved) return saved;
  const newest = savedPlan(context.sql, stored.plans.at(-1)?.year ?? 0);
  if (!newest || newest.year + 1 !== year) return null;
  const { text, beside } = newest;
  const file = newest.file.replace(/\d{4}(?=\.ya?ml$)/, String(year));
  const { nextYear } = await context.engine();
  return { year, version: 0, text: nextYear(text, year), beside, file };
}

async function problemsIn(
  { context, link, stored }: GardenRequest,
  { year, file, beside }: PlanDraft,
  text: string,
) {
  const { checkPlan } = await context.engine();
  const others = otherPlans(context.sql, stored, year);
  const answered = linesForPlan(others, answersIn(context.sql));
  const { problems } = checkPlan({ text, garden: link.garden, file, beside }, others, answered);
  return sayYears(problems, null);
}

async function saveForm(gardenRequest: GardenRequest, at: PlanDraft): Promise<Response> {
  const sent = planIn(await formOf(gardenRequest.request, MOST_CARRIED));
  if (sent === null) return plain(413, "That is no plan, or one that is too long.\n");
  const { context, link, origin } = gardenRequest;
  const { file, beside } = at;
  const year = { garden: link.garden, year: at.year };
  const wanted = { ...year, ...sent, file, beside, published: null, first: false, origin };
  const outcome = await saveText(context, wanted);
  const version = versionOf(outcome, sent.text);
  if (version === null) return notSaved(gardenRequest, at, { sent, outcome });
  const to = `${gardenRequest.base}plan/${at.year}?saved=${version}`;
  return plain(303, "Saved.\n", { Location: to });
}

/** The version a text was saved as; the one in force where that is this very text, as after an answer that was lost. */
function versionOf(outcome: SaveOutcome, text: string): number | null {
  if (outcome.kind === "saved") return outcome.version;
  const same = outcome.kind === "another" && outcome.inForce?.text === text;
  return same ? (outcome.inForce?.version ?? null) : null;
}

type SentText = { readonly base: number; readonly text: string };

/** What the form holds, its line ends made plain; null where it holds something else. */
export function planIn(form: URLSearchParams | null): SentText | null {
  const [base, text] = [form?.get("base") ?? "", form?.get("text") ?? null];
  if (text === null || !/^[0-9]{1,9}$/.test(base)) return null;
  return { base: Number(base), text: text.replace(/\r\n?/g, "\n") };
}

type NotSaved = {
  readonly sent: SentText;
  readonly outcome: SaveOutcome;
};

/** What was written stands in the page again, whatever kept it from being saved. */
async function notSaved(
  gardenRequest: GardenRequest,
  at: PlanDraft,
  { sent, outcome }: NotSaved,
): Promise<Response> {
  const { base, text } = sent;
  if (outcome.kind === "another") return besideAnother(gardenRequest, at, { sent, outcome });
  const [problems, status] = outcome.kind === "problems" ? [outcome.problems, 422] : [[], 413];
  const why = outcome.kind === "problems" ? NOT_SAVED_YET : "Not saved: a plan may have 256 KiB.";
  return show(gardenRequest, at, {
    status,
    word: { kind: "not saved", why },
    problems,
    base,
    text,
  });
}

async function besideAnother(
  gardenRequest: GardenRequest,
  at: PlanDraft,
  { sent, outcome }: { sent: SentText; outcome: Extract<SaveOutcome, { kind: "another" }> },
): Promise<Response> {
  const { inForce } = outcome;
  if (inForce === null) return notFound();
  const of = { year: at.year, version: sent.base };
  const from = planVersion(gardenRequest.context.sql, of)?.text ?? "";
  const { differences, mergeTexts } = await import("./differences.ts");
  const both = from === "" ? null : mergeTexts(from, inForce.text, sent.text);
  const text = both ?? sent.text;
  const { version } = inForce;
  const changed = differences(from, inForce.text);
  const word: PlanNotice = { kind: "another", version, both: both !== null, differences: changed };
  const problems = await problemsIn(gardenRequest, at, text);
  return show(gardenRequest, at, { status: 409, word, problems, base: version, text });
}

type PlanPageState = Pick<PlanPageProps, "word" | "problems" | "base" | "text"> & {
  readonly status: number;
};

function show(
  gardenRequest: GardenRequest,
  { year }: PlanDraft,
  { status, ...rest }: PlanPageState,
): Response {
  const { context, stored } = gardenRequest;
  const zone = zoneOf(stored);
  const versions = planVersions(context.sql, year).map(({ version, savedAt }) => {
    return { version, when: sayDay(dayAt(savedAt, zone), true) };
  });
  const known = stored.plans.map((plan) => plan.year);
  const years = [...known, (known.at(-1) ?? year) + 1];
  const newest = stored.plans.find((plan) => plan.year === year) ?? stored.plans.at(-1);
  const beds = (newest?.summary.beds.length ?? 0) > 0;
  const shown = { year, years, versions, beds, ...rest };
  return pageResponse(status, planPage(frameOf(gardenRequest), shown), SCRIPTED_WITH_DRAWING);
}

/** An earlier version to read and to restore; 404 where there is none of that number. */
export async function answerVersion(
  gardenRequest: GardenRequest,
  year: string,
  said: string,
): Promise<Response> {
  const at = await startingAt(gardenRequest, Number(year));
  const of = { year: Number(year), version: Number(said) };
  const found = planVersion(gardenRequest.context.sql, of);
  if (at === null || found === null) return notFound();
  const shown = { ...of, base: at.version, text: found.text };
  const { differences } = await import("./differences.ts");
  const changed = differences(at.text, found.text);
  return pageResponse(200, versionPage(frameOf(gardenRequest), { ...shown, differences: changed }));
}

/** What is wrong or doubtful in a text that is being written, for the page's script. Nothing is stored. */
export async function answerCheck(gardenRequest: GardenRequest, said: string): Promise<Response> {
  const at = await startingAt(gardenRequest, Number(said));
  const sent = planIn(await formOf(gardenRequest.request, MOST_CARRIED));
  if (at === null || sent === null) return plain(400, "That is no plan.\n");
  return json(200, problemsForScript(await problemsIn(gardenRequest, at, sent.text)));
}

/** Problems as the script takes them: the line, whether it keeps the plan from being saved, and what to say. */
export function problemsForScript(problems: readonly Problem[]) {
  return problems.map((problem) => ({
    line: problem.at.line,
    stops: problem.weight === "problem",
    says: sayAdvice(problem),
  }));
}
