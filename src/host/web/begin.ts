import { isoOf } from "../../base/days/day.ts";
import { dayAt } from "../../base/days/instants.ts";
import { CROPS } from "../../crops/crops.ts";
import { capital } from "../../engine/practices/sentence.ts";
import { type FirstAnswers, firstPlan } from "../../garden/plan/first-plan.ts";
import { pathOf } from "../links/mac.ts";
import { writeSegment } from "../links/segment.ts";
import { isInvited } from "../store/invitations.ts";
import { planVersion } from "../store/plans.ts";
import { json, page, plain, SCRIPTED } from "./answers.ts";
import { formOf, isHere } from "./body.ts";
import { cropsPage, FIELDS, firstTextPage, placePage, type Typed } from "./pages/begin.tsx";
import { linkPage } from "./pages/links.tsx";
import { checked, planIn } from "./plan-page.ts";
import { MOST_CARRIED, NOT_YET, saveText } from "./saving.ts";
import type { Knock } from "./visit.ts";

/** Letters of an answer, and lines of people or beds. */
const MOST_LETTERS = 20_000;
const MOST_LINES = 200;

/**
 * What an invitation opens: a short form, the crops, the plan as text, and the garden made. Null where it no longer makes
 * one. Sending the same first plan again, as after a lost answer, shows the owner's link again.
 */
export async function answerInvitation(knock: Knock, rest: string): Promise<Response | null> {
  const { shell, link, request } = knock;
  const open = await isInvited(shell.db, link.garden, writeSegment(link));
  if (request.method !== "POST") return open ? page(200, firstPage(knock)) : null;
  const form = await formOf(request, MOST_CARRIED);
  if (form === null) return open ? plain(413, "That is no form of ours, or too long.\n") : null;
  if (rest === "check") return open ? checkText(knock, form) : null;
  const step = form.get("step");
  if (step === "save") return saveFirst(knock, form, open);
  if (!open) return null;
  const typed = typedIn(form);
  if (step === "text")
    return page(200, textPage(knock, firstPlan(answersIn(typed, form))), SCRIPTED);
  const wrong = wrongIn(knock, typed);
  if (wrong.length > 0) return page(422, placePage(typed, zones(typed.clock), wrong));
  return page(
    200,
    cropsPage(
      typed,
      CROP_ROWS,
      bedsIn(typed).map(({ name }) => name),
    ),
  );
}

const CROP_ROWS = CROPS.map(({ key, many }) => ({ key, name: capital(many) })).sort((a, b) =>
  a.name < b.name ? -1 : 1,
);

/** Every zone by the name the runtime has for it, with the one that was named where that is another name for it. */
function zones(named: string): readonly string[] {
  const known = ["UTC", ...Intl.supportedValuesOf("timeZone")];
  return named === "" || known.includes(named) ? known : [named, ...known];
}

/** The zone that the platform supposes a visitor in; empty where it can't know, as on one's own machine. */
function supposedZone({ request, origin }: Knock): string {
  return isHere(new URL(origin).hostname) ? "" : (request.cf?.timezone ?? "");
}

/** Nothing typed yet but the clock that the platform supposes and the year that comes next. */
function firstPage(knock: Knock): string {
  const { shell } = knock;
  const clock = supposedZone(knock);
  const [year = "", month = ""] = isoOf(dayAt(shell.now(), "UTC")).split("-");
  const next = Number(month) >= 9 ? Number(year) + 1 : Number(year);
  const empty = Object.fromEntries(FIELDS.map((name) => [name, ""])) as Typed;
  return placePage({ ...empty, year: String(next), measures: "metric", clock }, zones(clock), []);
}

function typedIn(form: URLSearchParams): Typed {
  const said = (name: string) => (form.get(name) ?? "").replace(/\r\n?/g, "\n");
  return Object.fromEntries(FIELDS.map((name) => [name, said(name)])) as Typed;
}

const oneLine = (text: string) => text.replace(/\s+/g, " ").trim();

function linesIn(text: string): readonly string[] {
  return text.split("\n").map(oneLine).filter(Boolean);
}

function bedsIn({ beds }: Typed) {
  return linesIn(beds).map((line) => {
    const [name = "", ...size] = line.split(",").map((part) => part.trim());
    return { name, size: size.join(", ") };
  });
}

function answersIn(typed: Typed, form: URLSearchParams): FirstAnswers {
  const beds = bedsIn(typed);
  const bedOf = (key: string) => beds[Number(form.get(`bed-${key}`) ?? 0)]?.name ?? null;
  const ticked = form.getAll("crop");
  return {
    garden: oneLine(typed.garden),
    year: Number(typed.year),
    measures: typed.measures === "metric" ? "metric" : "inches and °F",
    clock: typed.clock,
    latitude: oneLine(typed.latitude),
    lastFrost: oneLine(typed.lastFrost),
    firstFrost: oneLine(typed.firstFrost),
    people: linesIn(typed.people),
    beds,
    crops: CROPS.filter(({ key }) => ticked.includes(key)).map(({ key, one }) => ({
      name: one,
      bed: bedOf(key),
    })),
  };
}

/** What keeps the first page's answers from being a plan, in words; names given twice too, since a plan has each but once. */
function wrongIn(knock: Knock, typed: Typed): readonly string[] {
  if (Object.values(typed).some((said) => said.length > MOST_LETTERS))
    return ["That is more than this form takes. Say less here, and the rest in the plan."];
  const many = [linesIn(typed.people), linesIn(typed.beds)].some(
    ({ length }) => length > MOST_LINES,
  );
  if (many) return [`More than ${MOST_LINES} people or beds: put the rest into the plan.`];
  const answers = answersIn(typed, new URLSearchParams());
  const twice = (kind: string, names: readonly string[]) =>
    names
      .filter((name, at) => names.indexOf(name) !== at)
      .map((name) => `Two ${kind} are called ${name}. Give one another name.`);
  const { problems } = read(knock, firstPlan(answers));
  return [
    ...twice("people", answers.people),
    ...twice(
      "beds",
      answers.beds.map(({ name }) => name),
    ),
    ...checked(problems)
      .filter(({ stops }) => stops)
      .map(({ says }) => says),
  ];
}

/** A first plan's text, read: what it comes to and what is wrong with it. */
function read({ shell, link }: Knock, text: string) {
  return shell.core.readPlan(text, { garden: link.garden, file: "plan" });
}

function textPage(knock: Knock, text: string, why: string | null = null): string {
  const check = `${new URL(knock.request.url).pathname.replace(/\/?$/, "/")}check`;
  const { problems } = read(knock, text);
  return firstTextPage({ text, check, problems, why });
}

function checkText(knock: Knock, form: URLSearchParams): Response {
  const sent = planIn(form);
  if (sent === null) return plain(400, "That is no plan.\n");
  const { problems } = read(knock, sent.text);
  return json(200, checked(problems));
}

async function saveFirst(
  knock: Knock,
  form: URLSearchParams,
  open: boolean,
): Promise<Response | null> {
  const { shell, link, origin } = knock;
  const text = planIn(form)?.text;
  if (text === undefined) return open ? plain(400, "That is no plan.\n") : null;
  const { garden } = link;
  const year = read(knock, text).plan?.year ?? 0;
  const file = `plans/${garden}/${year}.yaml`;
  if (open) {
    const wanted = { garden, year, text, file, beside: {}, published: null, ...FIRST, origin };
    const outcome = await saveText(shell, wanted);
    if (outcome.kind === "problems" || outcome.kind === "too long")
      return page(422, textPage(knock, text, NOT_YET), SCRIPTED);
  }
  const first = await planVersion(shell.db, { garden, year, version: 1 });
  return first?.text === text
    ? page(200, await ownersPage(knock), { "Cache-Control": "no-store" })
    : null;
}

const FIRST = { base: 0, first: true } as const;

async function ownersPage({ shell, link, origin }: Knock): Promise<string> {
  const owner = { garden: link.garden, role: "owner", person: null, serial: 1 } as const;
  const address = `${origin}${await pathOf(owner, shell.key)}`;
  return linkPage(null, { name: "Your garden's own link", address, feed: null });
}
