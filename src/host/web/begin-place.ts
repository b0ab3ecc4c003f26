import { besideOf, checkForm } from "./begin-check.ts";
import type { FirstForm } from "./first-form.ts";
import type { LinkRequest } from "./garden-request.ts";
import type { FrostNotice } from "./pages/begin-garden.tsx";
import type { FieldError } from "./pages/form-fields.tsx";
import { type PlanWithYears, withYears } from "./place-years.ts";

/** How long a page waits for an answer on the years behind a place [ms]; the cell goes on asking, and has it the next time. */
const MOST_MS = 6000;

/**
 * A form that goes by its place, with the years behind it; a notice where something is to be said before one goes on: what was found,
 * or why nothing was, and then the form goes by the two temperatures. Asked for once a place.
 */
export async function askPlace(
  linkRequest: LinkRequest,
  form: FirstForm,
): Promise<{ readonly form: FirstForm; readonly notice: FrostNotice | null }> {
  const { context, link } = linkRequest;
  const engine = await context.engine();
  const { text } = await checkForm(linkRequest, form, false);
  const plan = { text, garden: link.garden, file: "plan", beside: besideOf(engine, form) };
  const { file, fault } = await inTime(withYears(context, plan), { file: plan, fault: LATE });
  if (fault !== null) return { form: { ...form, way: "numbers" }, notice: silent(fault) };
  const years = file.beside?.[engine.yearsFile] ?? "";
  if (years === form.years) return { form, notice: null };
  const found = { ...form, years };
  const { frosts } = await checkForm(linkRequest, found, false);
  return { form: found, notice: { kind: "found", says: frosts } };
}

/**
 * The towns of the name that was typed, to choose one, or that there is none; null where no town was typed, or the place is known
 * already.
 */
export async function askTown(
  { context }: LinkRequest,
  { town, answers }: FirstForm,
): Promise<FrostNotice | FieldError | null> {
  if (town === "" || answers.where !== "") return null;
  const { findTowns } = await import("../towns/find-towns.ts");
  const towns = findTowns(await context.towns(), town);
  return towns.length > 0 ? { kind: "towns", towns } : { field: "town", says: NO_TOWN };
}

const NO_TOWN =
  "No town of 20,000 people is called so. Take a larger one near by, or write its latitude and longitude below.";

const LATE = "no answer so far";

function silent(fault: string): FrostNotice {
  return {
    kind: "silent",
    says: `Open-Meteo could not be asked for the years there: ${fault}. Go on with the two temperatures, or choose the place again in a minute.`,
  };
}

/** What comes of it, or what stands in where that takes too long. */
function inTime(work: Promise<PlanWithYears>, late: PlanWithYears): Promise<PlanWithYears> {
  const waited = new Promise<PlanWithYears>((done) => setTimeout(done, MOST_MS, late));
  return Promise.race([work, waited]);
}
