import { sayProblem } from "../../base/index.ts";
import { isGone } from "../store/leaving.ts";
import { savedPlan } from "../store/plans.ts";
import { json, notFound, plain } from "./answers.ts";
import { bodyOf } from "./body.ts";
import type { GardenContext } from "./garden-context.ts";
import { MOST_CARRIED, type PlanKey, type SaveOutcome, saveText } from "./saving.ts";

/** What is sent to publish a plan; `beside` the texts of files it names, `published` the print of the file it comes from. */
export type Sent = {
  readonly text: string;
  readonly file: string;
  readonly beside: Readonly<Record<string, string>>;
  readonly published: string | null;
};

/** The plan in force, with its version as the tag to send back when changing it; 404 where there is none. */
export function answerPlan({ sql }: GardenContext, year: number): Response {
  const saved = savedPlan(sql, year);
  if (saved === null) return notFound();
  const { version, text, beside, file, published, savedAt } = saved;
  return json(200, { version, text, beside, file, published, savedAt }, tagOf(version));
}

/**
 * Saves a plan that has no problem, over the version it started from: `If-Match: "3"`, or `If-None-Match: *` for a
 * year's first. 200 or 201 with the new version and the doubts; 422 with the problems, 413 where it is too long,
 * 428 without a condition, 412 with the version in force where that is another, and 410 where the garden was deleted
 * for good: then nothing is stored.
 */
export async function answerPublish(
  context: GardenContext,
  year: PlanKey,
  request: Request,
): Promise<Response> {
  const base = baseOf(request.headers);
  if (base === null) return plain(428, "Say which version this started from.\n");
  const body = await bodyOf(request, MOST_CARRIED);
  const sent = body === null ? null : sentOf(body, year);
  if (body === null) return plain(413, TOO_LONG);
  if (sent === null) return plain(400, "This is not a plan to publish.\n");
  if (isGone(context.sql)) return plain(410, GONE);
  const { origin } = new URL(request.url);
  return outcomeResponse(
    await saveText(context, { ...year, ...sent, base, first: false, origin }),
    base,
  );
}

const TOO_LONG = "A plan may have 256 KiB.\n";
const GONE = "This garden was deleted for good. Give its folder another name to begin anew.\n";

function outcomeResponse(outcome: SaveOutcome, base: number): Response {
  switch (outcome.kind) {
    case "too long":
      return plain(413, TOO_LONG);
    case "problems":
      return json(422, { problems: outcome.problems.map(sayProblem) });
    case "another": {
      const { version, text } = outcome.inForce ?? { version: 0, text: "" };
      return json(412, { version, text }, version === 0 ? {} : tagOf(version));
    }
    case "saved": {
      const { version, problems } = outcome;
      const said = { version, doubts: problems.map(sayProblem) };
      return json(base === 0 ? 201 : 200, said, tagOf(version));
    }
  }
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
function sentOf(body: string, { garden, year }: PlanKey): Sent | null {
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
