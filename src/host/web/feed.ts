import type { PollAnswer } from "../edge/poll.ts";
import type { Feed } from "../links/feeds.ts";
import { type Link, writeSegment } from "../links/segment.ts";
import { logFailure } from "../log.ts";
import { unzip } from "../store/bytes.ts";
import { feedHeaders, unavailable } from "./answers.ts";
import type { AppContext } from "./app-context.ts";
import { codingFor, conditionsOf, heldBy } from "./validators.ts";

/** One poll of a feed over a good link. */
export type Poll = { readonly request: Request; readonly link: Link; readonly feed: Feed };

/**
 * Answers a poll from what the garden's object has stored. With the object down, whoever holds a copy is told to keep it.
 * Never a 200 that is not a whole calendar: one would empty the calendars of GNOME and Thunderbird. Null where the link was
 * revoked or the garden is not there.
 */
export async function answerFeed(
  { gardenOf }: Pick<AppContext, "gardenOf">,
  { request, link, feed }: Poll,
): Promise<Response | null> {
  const coding = codingFor(request.cf?.clientAcceptEncoding ?? null);
  const key = { garden: link.garden, link: writeSegment(link), feed: feed.path };
  try {
    const conditions = conditionsOf(request.headers);
    const answer = await gardenOf(link.garden).poll({ ...key, conditions, coding });
    if (answer.kind === "nothing") return null;
    if (answer.kind === "later") return withoutStore(request);
    return calendarResponse(answer, feed, coding === "gzip");
  } catch (error) {
    return withoutStore(request, logFailure("a garden's object", error, key.garden));
  }
}

type StoredAnswer = Extract<PollAnswer, { readonly etag: string }>;

function calendarResponse(answer: StoredAnswer, feed: Feed, gzip: boolean): Response {
  const headers = {
    ...feedHeaders(),
    ETag: answer.etag,
    "Last-Modified": new Date(answer.lastModified).toUTCString(),
  };
  if (answer.kind === "same") return new Response(null, { status: 304, headers });
  return gzip
    ? whole(answer.body, { ...headers, ...about(feed), "Content-Encoding": "gzip" })
    : whole(new TextEncoder().encode(unzip(answer.body)), { ...headers, ...about(feed) });
}

function whole(body: Uint8Array<ArrayBuffer>, headers: Record<string, string>): Response {
  const length = { "Content-Length": String(body.length) };
  return new Response(body, { headers: { ...headers, ...length }, encodeBody: "manual" });
}

function about(feed: Feed): Record<string, string> {
  const name = feed.path.replaceAll("/", "-");
  return {
    "Content-Type": "text/calendar; charset=utf-8",
    "Content-Disposition": `inline; filename="${name}"`,
  };
}

function withoutStore(request: Request, number: string | null = null): Response {
  const held = heldBy(request.headers);
  if (!held.any) return unavailable(number);
  const etag: Record<string, string> = held.etag === null ? {} : { ETag: held.etag };
  return new Response(null, { status: 304, headers: { ...feedHeaders(), ...etag } });
}
