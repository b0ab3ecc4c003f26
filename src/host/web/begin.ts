import type { CropName, FirstAnswers, Problem } from "../../app/index.ts";
import { dayAt, isoOf } from "../../base/index.ts";
import { writeSegment } from "../links/segment.ts";
import { isInvited } from "../store/invitations.ts";
import { planVersion } from "../store/plans.ts";
import { json, pageResponse, plain, SCRIPTED } from "./answers.ts";
import { formOf, isHere } from "./body.ts";
import type { GardenContext } from "./garden-context.ts";
import type { LinkRequest } from "./garden-request.ts";
import {
  cropsPage,
  FIELDS,
  type FormAnswers,
  firstTextPage,
  gardenFormPage,
} from "./pages/begin.tsx";
import { type PlanWithYears, sayYears, withYears } from "./place-years.ts";
import { planIn, problemsForScript } from "./plan-page.ts";
import { ownersPage } from "./recovery.ts";
import { answerRestoreInvited } from "./restoring.ts";
import { MOST_CARRIED, NOT_SAVED_YET, saveText } from "./saving.ts";

/** Letters of an answer, and lines of people or beds. */
const MOST_LETTERS = 20_000;
const MOST_LINES = 200;

/**
 * What an invitation opens: a short form, the crops, the plan as text, and the garden made. Null where it no longer makes
 * one. Sending the same first plan again, as after a lost answer, shows the owner's link again.
 */
export async function answerInvitation(
  linkRequest: LinkRequest,
  rest: string,
): Promise<Response | null> {
  const { context, link, request } = linkRequest;
  if (rest === "restore" && request.method === "POST") return answerRestoreInvited(linkRequest);
  const open = isInvited(context.sql, writeSegment(link));
  if (request.method !== "POST") return open ? pageResponse(200, firstPage(linkRequest)) : null;
  const form = await formOf(request, MOST_CARRIED);
  if (form === null) return open ? plain(413, "That is no form of ours, or too long.\n") : null;
  if (rest === "check") return open ? checkText(linkRequest, form) : null;
  const step = form.get("step");
  if (step === "save") return saveFirst(linkRequest, form, open);
  if (!open) return null;
  const engine = await context.engine();
  const formAnswers = formAnswersIn(form);
  if (step === "text") {
    const answers = answersIn(formAnswers);
    const crops = cropsIn(form, engine.cropNames(), answers);
    const text = engine.firstPlan({ ...answers, crops });
    return pageResponse(200, await textPage(linkRequest, text), SCRIPTED);
  }
  const wrong = await wrongIn(linkRequest, formAnswers);
  if (wrong.length > 0)
    return pageResponse(
      422,
      gardenFormPage(formAnswers, zones(formAnswers.clock), wrong, under(linkRequest, "restore")),
    );
  return pageResponse(
    200,
    cropsPage(
      formAnswers,
      engine.cropNames(),
      bedsIn(formAnswers).map(({ name }) => name),
    ),
  );
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
function firstPage(linkRequest: LinkRequest): string {
  const { context } = linkRequest;
  const clock = supposedZone(linkRequest);
  const [year = "", month = ""] = isoOf(dayAt(context.now(), "UTC")).split("-");
  const next = Number(month) >= 9 ? Number(year) + 1 : Number(year);
  const empty = Object.fromEntries(FIELDS.map((name) => [name, ""])) as FormAnswers;
  return gardenFormPage(
    { ...empty, year: String(next), measures: "metric", clock },
    zones(clock),
    [],
    under(linkRequest, "restore"),
  );
}

function formAnswersIn(form: URLSearchParams): FormAnswers {
  const said = (name: string) => (form.get(name) ?? "").replace(/\r\n?/g, "\n");
  return Object.fromEntries(FIELDS.map((name) => [name, said(name)])) as FormAnswers;
}

const oneLine = (text: string) => text.replace(/\s+/g, " ").trim();

function linesIn(text: string): readonly string[] {
  return text.split("\n").map(oneLine).filter(Boolean);
}

function bedsIn({ beds }: FormAnswers) {
  return linesIn(beds).map((line) => {
    const [name = "", ...size] = line.split(",").map((part) => part.trim());
    return { name, size: size.join(", ") };
  });
}

/** What was ticked on the page of crops, each with its bed. */
function cropsIn(form: URLSearchParams, crops: readonly CropName[], { beds }: FirstAnswers) {
  const bedOf = (key: string) => beds[Number(form.get(`bed-${key}`) ?? 0)]?.name ?? null;
  const ticked = form.getAll("crop");
  return crops
    .filter(({ key }) => ticked.includes(key))
    .map(({ key, one }) => ({ name: one, bed: bedOf(key) }));
}

/** The answers of the first page, with no crop yet. */
function answersIn(formAnswers: FormAnswers): FirstAnswers {
  return {
    garden: oneLine(formAnswers.garden),
    year: Number(formAnswers.year),
    measures: formAnswers.measures === "metric" ? "metric" : "inches and °F",
    clock: formAnswers.clock,
    latitude: oneLine(formAnswers.latitude),
    lastFrost: oneLine(formAnswers.lastFrost),
    firstFrost: oneLine(formAnswers.firstFrost),
    hottest: oneLine(formAnswers.hottest),
    coldest: oneLine(formAnswers.coldest),
    people: linesIn(formAnswers.people),
    beds: bedsIn(formAnswers),
    crops: [],
  };
}

/** What keeps the first page's answers from being a plan, in words; names given twice too, since a plan has each but once. */
async function wrongIn(
  linkRequest: LinkRequest,
  formAnswers: FormAnswers,
): Promise<readonly string[]> {
  if (Object.values(formAnswers).some((said) => said.length > MOST_LETTERS))
    return ["That is more than this form takes. Say less here, and the rest in the plan."];
  const many = [linesIn(formAnswers.people), linesIn(formAnswers.beds)].some(
    ({ length }) => length > MOST_LINES,
  );
  if (many) return [`More than ${MOST_LINES} people or beds: put the rest into the plan.`];
  const answers = answersIn(formAnswers);
  const twice = (kind: string, names: readonly string[]) =>
    names
      .filter((name, at) => names.indexOf(name) !== at)
      .map((name) => `Two ${kind} are called ${name}. Give one another name.`);
  const { firstPlan } = await linkRequest.context.engine();
  const { problems } = await read(linkRequest, firstPlan(answers));
  return [
    ...twice("people", answers.people),
    ...twice(
      "beds",
      answers.beds.map(({ name }) => name),
    ),
    ...problemsForScript(problems)
      .filter(({ stops }) => stops)
      .map(({ says }) => says),
  ];
}

/** A first plan's text, read: what it comes to and what is wrong with it. */
async function read({ context, link }: LinkRequest, text: string) {
  return readWithYears(context, {
    file: { text, garden: link.garden, file: "plan" },
    fault: null,
  });
}

/** The same with the years behind its place, or why they could not be had. */
async function readWithYears({ engine }: GardenContext, { file, fault }: PlanWithYears) {
  const { checkPlan } = await engine();
  const { plan, problems } = checkPlan(file, [], []);
  return { plan, problems: sayYears(problems, fault) };
}

async function textPage(
  linkRequest: LinkRequest,
  text: string,
  notSaved: { readonly why: string; readonly problems: readonly Problem[] } | null = null,
): Promise<string> {
  const check = under(linkRequest, "check");
  const problems = notSaved?.problems ?? (await read(linkRequest, text)).problems;
  return firstTextPage({ text, check, problems, why: notSaved?.why ?? null });
}

/** The path of something under the invitation. */
function under({ request }: LinkRequest, rest: string): string {
  return `${new URL(request.url).pathname.replace(/\/?$/, "/")}${rest}`;
}

async function checkText(linkRequest: LinkRequest, form: URLSearchParams): Promise<Response> {
  const sent = planIn(form);
  if (sent === null) return plain(400, "That is no plan.\n");
  const { problems } = await read(linkRequest, sent.text);
  return json(200, problemsForScript(problems));
}

async function saveFirst(
  linkRequest: LinkRequest,
  form: URLSearchParams,
  open: boolean,
): Promise<Response | null> {
  const { context, link, origin } = linkRequest;
  const text = planIn(form)?.text;
  if (text === undefined) return open ? plain(400, "That is no plan.\n") : null;
  const { garden } = link;
  const years = await withYears(context, { text, garden, file: "plan" });
  const { plan, problems } = await readWithYears(context, years);
  const notSaved = async (problems: readonly Problem[]) =>
    pageResponse(
      422,
      await textPage(linkRequest, text, { why: NOT_SAVED_YET, problems }),
      SCRIPTED,
    );
  if (open && plan === null) return notSaved(problems);
  const year = plan?.year ?? 0;
  const file = `plans/${garden}/${year}.yaml`;
  if (open) {
    const wanted = {
      garden,
      year,
      text,
      file,
      beside: years.file.beside ?? {},
      published: null,
      ...FIRST,
      origin,
    };
    const outcome = await saveText(context, wanted);
    if (outcome.kind === "problems") return notSaved(outcome.problems);
    if (outcome.kind === "too long") return notSaved(problems);
  }
  const first = planVersion(context.sql, { year, version: 1 });
  return first?.text === text ? ownersPage(linkRequest, 1) : null;
}

const FIRST = { base: 0, first: true } as const;
