import { pageResponse } from "./answers.ts";
import { troublePage } from "./pages/trouble.tsx";
import { conditionsOf, etagOf, isNotModified } from "./validators.ts";

/**
 * Whether a person looks through a browser: what it says it takes begins with pages of both kinds, which no calendar program
 * and no library says of itself, and it holds no copy of what it asks for, as a program that follows a calendar does. Whoever
 * says less gets what the address names, since a page in a calendar's place would empty the calendar.
 * Source: HTML Living Standard, "navigate" with Fetch Standard, "default `Accept` value" for documents.
 */
export function asksForPage(headers: Headers): boolean {
  const accepted = (headers.get("accept") ?? "").toLowerCase();
  const pages = accepted.includes("text/html") && accepted.includes("application/xhtml+xml");
  const { tags, since } = conditionsOf(headers);
  return pages && !accepted.includes("text/calendar") && tags === null && since === null;
}

/** An error's short line as a page, where a person looks; the same bytes for the same line. Everything else as it is. */
export async function forPerson(answer: Response, { headers }: Request): Promise<Response> {
  const isLine = answer.headers.get("content-type")?.startsWith("text/plain") ?? false;
  if (answer.status < 400 || !isLine || !asksForPage(headers)) return answer;
  const page = pageResponse(
    answer.status,
    troublePage(answer.status, (await answer.text()).trim()),
  );
  for (const name of ["allow", "retry-after"]) {
    const value = answer.headers.get(name);
    if (value !== null) page.headers.set(name, value);
  }
  page.headers.set("Cache-Control", "no-store");
  return page;
}

/**
 * An answer that may be kept, with a tag of its bytes and the epoch; without a body where the browser has these bytes. What
 * has a tag, or is not to be kept, stays as it is. Source: RFC 9110, sections 8.8.3, 13.1.2 and 15.4.5.
 */
export async function withTag(
  answer: Response,
  { method, headers }: Request,
  epoch: string,
): Promise<Response> {
  const isRead = method === "GET" || method === "HEAD";
  const isKept = answer.headers.get("cache-control") !== "no-store";
  if (!isRead || answer.status !== 200 || !isKept || answer.headers.has("etag")) return answer;
  const bytes = await answer.arrayBuffer();
  const etag = etagOf(await printOf(bytes), epoch, "identity");
  const kept = new Headers(answer.headers);
  kept.set("ETag", etag);
  const { tags } = conditionsOf(headers);
  if (!isNotModified({ tags, since: null }, { etag, lastModified: 0, now: 0 }))
    return new Response(bytes, { headers: kept });
  kept.delete("content-type");
  return new Response(null, { status: 304, headers: kept });
}

/** Bytes of a hash that a tag has: enough that two pages never share it. */
const PRINT_BYTES = 16;

async function printOf(bytes: ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes)).slice(0, PRINT_BYTES);
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
