import type { Problem } from "../../base/index.ts";
import { writeSegment } from "../links/segment.ts";
import { isInvited } from "../store/invitations.ts";
import { json, pageResponse, plain, SCRIPTED } from "./answers.ts";
import { besideOf, checkForm, firstWrongBefore, wrongOn, yearsAt } from "./begin-check.ts";
import { askPlace, askTown } from "./begin-place.ts";
import { saveFirst } from "./begin-save.ts";
import { formOf, isHere } from "./body.ts";
import { type FirstForm, type FormStep, readForm, STEPS, withTicked } from "./first-form.ts";
import type { LinkRequest } from "./garden-request.ts";
import type { FormPageProps } from "./pages/begin.tsx";
import { amountsPage, cropsPage } from "./pages/begin-crops.tsx";
import { type FrostNotice, frostPage, gardenPage } from "./pages/begin-garden.tsx";
import { lookPage } from "./pages/begin-look.tsx";
import { bedsPage, peoplePage } from "./pages/begin-rows.tsx";
import { firstTextPage } from "./pages/begin-text.tsx";
import type { FieldError } from "./pages/form-fields.tsx";
import { sayYears } from "./place-years.ts";
import { planIn, problemsForScript } from "./plan-page.ts";
import { answerRestoreInvited } from "./restoring.ts";
import { MOST_CARRIED, NOT_SAVED_YET } from "./saving.ts";

/**
 * What an invitation opens: a form of short pages, the plan as text for who wants it, and the garden made. All that was typed is
 * carried in the pages themselves. Null where it no longer makes a garden. Sending the same first plan again, as after a lost
 * answer, shows its links again.
 */
export async function answerInvitation(
  linkRequest: LinkRequest,
  rest: string,
): Promise<Response | null> {
  const { context, link, request } = linkRequest;
  if (rest === "restore" && request.method === "POST") return answerRestoreInvited(linkRequest);
  const open = isInvited(context.sql, writeSegment(link));
  if (request.method !== "POST")
    return open ? showPage(linkRequest, emptyForm(linkRequest), "garden") : null;
  const sent = await formOf(request, MOST_CARRIED);
  const form = sent && readForm(sent);
  if (sent === null || form === null)
    return open ? plain(413, "That is no form of ours, or longer than one can be.\n") : null;
  if (rest === "check") return open ? checkText(linkRequest, form, sent) : null;
  return answerForm(linkRequest, { form, sent, open });
}

/** A form that was sent, and whether the invitation is still open. */
type SentForm = {
  readonly form: FirstForm;
  readonly sent: URLSearchParams;
  readonly open: boolean;
};

async function answerForm(
  linkRequest: LinkRequest,
  { form: typed, sent, open }: SentForm,
): Promise<Response | null> {
  const at = STEPS.find((step) => step === sent.get("at")) ?? null;
  const to = sent.get("step");
  const form = at === "crops" ? await ticked(linkRequest, typed, sent) : typed;
  if (to === "save-text") return saveText(linkRequest, form, open);
  if (at === "look" && to === "next") return save(linkRequest, form, open);
  if (!open) return null;
  if (to === "text") return showText(linkRequest, form);
  if (to === "more" && at !== null) return showPage(linkRequest, form, at, { spare: MORE_ROWS });
  const target = targetOf(at, to, form);
  if (at !== null && STEPS.indexOf(target) <= STEPS.indexOf(at))
    return showPage(linkRequest, form, target);
  return at === "frost" ? leaveFrost(linkRequest, form, target) : goOn(linkRequest, form, target);
}

/** On from the page of frosts, once the town that was typed is chosen and the years behind the place are there. */
async function leaveFrost(
  linkRequest: LinkRequest,
  form: FirstForm,
  target: FormStep,
): Promise<Response> {
  const town = await askTown(linkRequest, form);
  if (town !== null)
    return showPage(
      linkRequest,
      form,
      "frost",
      "kind" in town ? { notice: town } : { errors: [town] },
    );
  if (form.way !== "place") return goOn(linkRequest, form, target);
  const { form: asked, notice } = await askPlace(linkRequest, form);
  return notice === null
    ? goOn(linkRequest, asked, target)
    : showPage(linkRequest, asked, "frost", { notice });
}

/** The page that a button leads to; how much is only asked where something grows. */
function targetOf(at: FormStep | null, to: string | null, { answers }: FirstForm): FormStep {
  const named = STEPS.find((step) => step === to);
  if (named) return named;
  const from = at === null ? 0 : STEPS.indexOf(at);
  const target = STEPS[from + (to === "back" ? -1 : 1)] ?? "garden";
  if (target !== "amounts" || answers.crops.length > 0) return target;
  return to === "back" ? "crops" : "look";
}

/** The next page, or the first with something wrong on it. */
async function goOn(
  linkRequest: LinkRequest,
  form: FirstForm,
  target: FormStep,
): Promise<Response> {
  const { wrong } = await checkForm(linkRequest, form, false);
  const bad = firstWrongBefore(target, wrong);
  return bad === null
    ? showPage(linkRequest, form, target)
    : showPage(linkRequest, form, bad, { errors: wrongOn(bad, wrong) });
}

async function ticked({ context }: LinkRequest, form: FirstForm, sent: URLSearchParams) {
  const { cropNames } = await context.engine();
  return withTicked(form, sent.getAll("crop"), cropNames());
}

/** Empty rows at the foot of a page of rows, and after a wish for more. */
const [SPARE_ROWS, MORE_ROWS] = [2, 5];

type PageState = {
  readonly errors?: readonly FieldError[];
  readonly spare?: number;
  readonly notice?: FrostNotice | null;
};

async function showPage(
  linkRequest: LinkRequest,
  form: FirstForm,
  step: FormStep,
  { errors = [], spare = SPARE_ROWS, notice = null }: PageState = {},
): Promise<Response> {
  const status = errors.length > 0 ? 422 : 200;
  const page = { form, errors, spare };
  const { cropNames } = await linkRequest.context.engine();
  switch (step) {
    case "garden":
      return pageResponse(status, firstPage(linkRequest, page));
    case "frost":
      return pageResponse(
        status,
        frostPage({ ...page, notice, asks: linkRequest.context.askYears !== null }),
      );
    case "people":
      return pageResponse(status, peoplePage(page));
    case "beds":
      return pageResponse(status, bedsPage(page));
    case "crops":
      return pageResponse(status, cropsPage({ ...page, offers: cropNames() }));
    case "amounts":
      return pageResponse(status, amountsPage({ ...page, offers: cropNames() }));
    case "look":
      return pageResponse(status, await look(linkRequest, form));
  }
}

/** The first page, with the way to bring a garden's archive in its place. */
function firstPage(linkRequest: LinkRequest, page: FormPageProps): string {
  const restore = pathBelow(linkRequest, "restore");
  return gardenPage({ ...page, zones: zones(page.form.answers.clock), restore });
}

/** The path of something under the invitation. */
function pathBelow({ request }: LinkRequest, rest: string): string {
  return `${new URL(request.url).pathname.replace(/\/?$/, "/")}${rest}`;
}

async function look(linkRequest: LinkRequest, form: FirstForm): Promise<string> {
  const { context } = linkRequest;
  const { sampleMonth } = await context.engine();
  const looked = { ...form, looked: true };
  const { text: made, frosts, wrong, doubts, plan } = await checkForm(linkRequest, looked, true);
  const page = { form: looked, errors: wrong, frosts };
  const { text, said } = await currentText(form, made);
  if (text === made)
    return lookPage({
      ...page,
      doubts,
      sample: plan && sampleMonth(plan, context.now()),
      text,
      said,
    });
  const read = await readText(linkRequest, form, text);
  const sample = read.plan && sampleMonth(read.plan, context.now());
  const inText = problemsForScript(read.problems).map(({ says }) => ({ field: "", says }));
  return lookPage({ ...page, doubts: inText, sample, text, said: said ?? BY_HAND });
}

/** Every zone by the name the runtime has for it, with the one that was named where that is another name for it. */
function zones(named: string): readonly string[] {
  const known = ["UTC", ...Intl.supportedValuesOf("timeZone")];
  return named === "" || known.includes(named) ? known : [named, ...known];
}

/** The zone that the platform supposes a visitor in; empty where it can't know, as on one's own machine. */
function supposedZone({ zone, origin }: LinkRequest): string {
  return isHere(new URL(origin).hostname) ? "" : (zone ?? "");
}

/** Nothing typed yet but the clock that the platform supposes and the year that comes next. */
function emptyForm(linkRequest: LinkRequest): FirstForm {
  const year = String(yearsAt(linkRequest.context.now()).next);
  const form = readForm(new URLSearchParams({ year, clock: supposedZone(linkRequest) }));
  if (form === null) throw new Error("an empty form can be read");
  return form;
}

const BY_HAND = "You have changed the plan's text. It is saved as you changed it.";

const NOT_MERGED =
  "The plan's text is as you changed it. What you answered differently since then is not in it.";

/**
 * The plan's text: as the answers make it, or as it was changed by hand, with what was answered differently since then where that
 * touches other lines; where it does not, that is said.
 */
async function currentText(
  { text, textOf }: FirstForm,
  made: string,
): Promise<{ readonly text: string; readonly said: string | null }> {
  if (textOf === "" || text === textOf) return { text: made, said: null };
  if (textOf === made) return { text, said: null };
  const { mergeTexts } = await import("./differences.ts");
  const both = mergeTexts(textOf, made, text);
  return both === null ? { text, said: NOT_MERGED } : { text: both, said: null };
}

async function showText(linkRequest: LinkRequest, form: FirstForm): Promise<Response> {
  const { text: made } = await checkForm(linkRequest, form, false);
  return textPage(linkRequest, form, { ...(await currentText(form, made)), made });
}

/** The text, that which the answers make, and what kept it from being saved. */
type ShownText = {
  readonly text: string;
  readonly made: string;
  readonly said?: string | null;
  readonly wrong?: readonly Problem[] | null;
};

async function textPage(
  linkRequest: LinkRequest,
  form: FirstForm,
  { text, made, said = null, wrong = null }: ShownText,
): Promise<Response> {
  const check = pathBelow(linkRequest, "check");
  const problems = wrong ?? (await readText(linkRequest, form, text)).problems;
  const page = firstTextPage({ form, text, textOf: made, check, problems, said });
  return pageResponse(wrong === null ? 200 : 422, page, SCRIPTED);
}

/** A first plan's text, read: what it comes to and what is wrong with it. */
async function readText({ context, link }: LinkRequest, form: FirstForm, text: string) {
  const engine = await context.engine();
  const file = { text, garden: link.garden, file: "plan", beside: besideOf(engine, form) };
  const { plan, problems } = engine.checkPlan(file, [], []);
  return { plan, problems: sayYears(problems, null) };
}

async function checkText(
  linkRequest: LinkRequest,
  form: FirstForm,
  sent: URLSearchParams,
): Promise<Response> {
  const text = planIn(sent)?.text;
  if (text === undefined) return plain(400, "That is no plan.\n");
  const { problems } = await readText(linkRequest, form, text);
  return json(200, problemsForScript(problems));
}

/** Saves the plan that the answers come to; with something wrong in them their page is shown instead. */
async function save(
  linkRequest: LinkRequest,
  form: FirstForm,
  open: boolean,
): Promise<Response | null> {
  const { text: made, wrong } = await checkForm(linkRequest, form, false);
  const { text } = await currentText(form, made);
  if (text !== made) return saveText(linkRequest, { ...form, text, textOf: made }, open);
  const bad = firstWrongBefore("look", wrong);
  if (open && bad !== null)
    return showPage(linkRequest, form, bad, { errors: wrongOn(bad, wrong) });
  const saved = await saveFirst(linkRequest, await firstText(linkRequest, form, text), open);
  return isProblems(saved) ? showPage(linkRequest, form, "look") : saved;
}

/** Saves the plan as it was changed by hand; with something wrong in it, it is shown again. */
async function saveText(
  linkRequest: LinkRequest,
  form: FirstForm,
  open: boolean,
): Promise<Response | null> {
  const { text, textOf } = form;
  const saved = await saveFirst(linkRequest, await firstText(linkRequest, form, text), open);
  if (!isProblems(saved)) return saved;
  return textPage(linkRequest, form, { text, made: textOf, said: NOT_SAVED_YET, wrong: saved });
}

function isProblems(saved: Response | readonly Problem[] | null): saved is readonly Problem[] {
  return Array.isArray(saved);
}

async function firstText({ context }: LinkRequest, form: FirstForm, text: string) {
  return { text, beside: besideOf(await context.engine(), form) };
}
