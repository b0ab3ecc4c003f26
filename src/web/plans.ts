import { sayProblem } from "../problems/problem.ts";
import { openGarden } from "../store/gardens.ts";
import { type Saving, savedPlan, savePlan } from "../store/plans.ts";
import { json, notFound, plain } from "./answers.ts";
import { bodyOf } from "./body.ts";
import { usualIn } from "./render.ts";
import type { Shell } from "./shell.ts";

const KIB = 1024;
/** Bytes of a plan, and of the files beside it together. */
const MOST = 256 * KIB;
/** Bytes of the JSON that carries them, which writes some characters longer. */
const MOST_CARRIED = 1024 * KIB;

/** What is sent to publish a plan; `beside` the texts of files it names, `published` the print of the file it comes from. */
export type Sent = {
  readonly text: string;
  readonly file: string;
  readonly beside: Readonly<Record<string, string>>;
  readonly published: string | null;
};

/** One year's plan at an address. */
export type Year = { readonly garden: string; readonly year: number };

/** The plan in force, with its version as the tag to send back when changing it; 404 where there is none. */
export async function answerPlan({ db }: Shell, { garden, year }: Year): Promise<Response> {
  const saved = await savedPlan(db, garden, year);
  if (saved === null) return notFound();
  const { version, text, beside, file, published, savedAt } = saved;
  return json(200, { version, text, beside, file, published, savedAt }, tagOf(version));
}

/**
 * Saves a plan that has no problem, over the version it started from: `If-Match: "3"`, or `If-None-Match: *` for a
 * year's first. 200 or 201 with the new version and the doubts; 422 with the problems, 413 where it is too long,
 * 428 without a condition and 412 with the version in force where that is another: then nothing is stored.
 */
export async function answerPublish(shell: Shell, year: Year, request: Request): Promise<Response> {
  const base = baseOf(request.headers);
  if (base === null) return plain(428, "Say which version this started from.\n");
  const body = await bodyOf(request, MOST_CARRIED);
  const sent = body === null ? null : sentOf(body, year);
  if (body === null || (sent !== null && isTooLong(sent))) {
    return plain(413, "A plan may have 256 KiB.\n");
  }
  if (sent === null) return plain(400, "This is not a plan to publish.\n");
  return save(shell, { ...year, ...sent, base, origin: new URL(request.url).origin });
}

type Wanted = Year & Sent & Pick<Saving, "base" | "origin">;

async function save(shell: Shell, wanted: Wanted): Promise<Response> {
  const { db, core, code, now } = shell;
  const { garden, year, text, file, beside, base } = wanted;
  const { plan, problems } = core.readPlan(text, { garden, file, beside });
  if (plan === null) return json(422, { problems: problems.map(sayProblem) });
  if (plan.year !== year) return json(422, { problems: [wrongYear(file, plan.year, year)] });
  const version = await savePlan(db, { ...wanted, plan, readBy: code, savedAt: now() });
  if (version === null) return refused(await savedPlan(db, garden, year));
  const opened = await openGarden(db, garden);
  if (opened) await usualIn(shell, opened.stored);
  return json(
    base === 0 ? 201 : 200,
    { version, doubts: problems.map(sayProblem) },
    tagOf(version),
  );
}

function wrongYear(file: string, is: number, year: number): string {
  return sayProblem({
    code: "wrong-year",
    weight: "problem",
    at: { file, line: 1, column: 1 },
    is: `this plan is for ${is}`,
    shouldBe: `the plan for ${year} goes here`,
  });
}

function refused(inForce: { readonly version: number; readonly text: string } | null): Response {
  if (inForce === null) return json(412, { version: 0, text: "" });
  return json(412, { version: inForce.version, text: inForce.text }, tagOf(inForce.version));
}

function tagOf(version: number): Record<string, string> {
  return { ETag: `"${version}"` };
}

/** The version a change starts from, 0 for none; null where the request does not say. */
function baseOf(headers: Headers): number | null {
  const found = /^\s*"([1-9][0-9]{0,8})"\s*$/.exec(headers.get("if-match") ?? "");
  if (found) return Number(found[1]);
  return headers.get("if-none-match")?.trim() === "*" ? 0 : null;
}

/** What was sent, null where it is something else. The file's name is only ever shown. */
function sentOf(body: string, { garden, year }: Year): Sent | null {
  const value = parsed(body);
  if (typeof value !== "object" || value === null) return null;
  const { text, file, beside = {}, published = null } = value as Record<string, unknown>;
  const named = typeof file === "string" && file.length <= 300 ? file : `${garden}/${year}.yaml`;
  if (typeof text !== "string" || !isTexts(beside)) return null;
  if (published !== null && (typeof published !== "string" || published.length > 100)) return null;
  return { text, file: named, beside, published };
}

function parsed(body: string): unknown {
  try {
    return JSON.parse(body);
  } catch {
    return null;
  }
}

function isTexts(value: unknown): value is Readonly<Record<string, string>> {
  return (
    typeof value === "object" &&
    value !== null &&
    Object.values(value).every((text) => typeof text === "string")
  );
}

function isTooLong({ text, beside }: Sent): boolean {
  return bytesOf([text]) > MOST || bytesOf(Object.values(beside)) > MOST;
}

function bytesOf(texts: readonly string[]): number {
  const encoder = new TextEncoder();
  return texts.reduce((sum, text) => sum + encoder.encode(text).length, 0);
}
