import type { Feed } from "../links/feeds.ts";
import { type Link, writeSegment } from "../links/segment.ts";
import { gzipped, unpack } from "../store/bytes.ts";
import { type FeedKey, type Polled, pollFeed } from "../store/feeds.ts";
import { feedHeaders, notFound, unavailable } from "./answers.ts";
import type { AppContext } from "./app-context.ts";
import { cachePoll, recall } from "./memory.ts";
import { isStale, logged, render } from "./render.ts";
import { type Coding, codingFor, etagOf, heldBy, isNotModified } from "./validators.ts";

/** One poll of a feed over a good link; `behind` keeps work going after the answer. */
export type Poll = {
  readonly request: Request;
  readonly link: Link;
  readonly feed: Feed;
  readonly behind: (work: Promise<unknown>) => void;
};

/**
 * Answers a poll from stored bytes, with one query at the most. What is stale is written behind the answer, and in front of it only
 * where nothing is stored, or not the whole. With the store down, whoever holds a copy is told to keep it. Never a 200
 * that is not a whole calendar: one would empty the calendars of GNOME and Thunderbird. Null where the link was revoked or
 * the garden is not there.
 */
export async function answerPoll(context: AppContext, poll: Poll): Promise<Response | null> {
  const { link, feed } = poll;
  const key = { garden: link.garden, link: writeSegment(link), feed: feed.path };
  try {
    const polled = await found(context, key, heldFingerprint(context, poll.request));
    if (polled === null || polled.revoked) return null;
    const answer = polled.stored && answerStored(context, poll, polled.stored);
    if (polled.stored === null || answer === null) return await inFront(context, key, poll);
    if (isStale(context, polled.revision, polled.stored)) {
      poll.behind(logged(key.garden, () => render(context, key.garden, key)));
    }
    return answer;
  } catch (error) {
    console.error(`garden ${key.garden}: the store can't be read:`, error);
    return withoutStore(poll.request);
  }
}

/** What a poll needs, as it was found within the last second, else asked of the store. What is stale is asked again each time. */
async function found(
  context: AppContext,
  key: FeedKey,
  held: string | null,
): Promise<Polled | null> {
  const { memory } = context;
  const now = context.now();
  const known = memory && recall(memory, key, { now, held });
  if (known) return known;
  const polled = await pollFeed(context.db, key, held);
  const lasts =
    polled?.stored && !polled.revoked && !isStale(context, polled.revision, polled.stored);
  if (memory && lasts) cachePoll(memory, key, polled, now);
  return polled;
}

type PolledFeed = NonNullable<Polled["stored"]>;

/** Writes the feed first, then answers what is stored, be it this one's work or a faster one's. */
async function inFront(context: AppContext, key: FeedKey, poll: Poll): Promise<Response> {
  const went = await logged(key.garden, () => render(context, key.garden, key));
  const polled = await pollFeed(context.db, key);
  if (went && !polled?.stored) return notFound();
  const answer = polled?.stored ? answerStored(context, poll, polled.stored) : null;
  return answer ?? withoutStore(poll.request);
}

function codingOf(request: Request): Coding {
  return codingFor(request.cf?.clientAcceptEncoding ?? null);
}

/** The print of the bytes a client holds, where it names just one tag and that is one it could get now; else null. */
function heldFingerprint({ epoch }: AppContext, request: Request): string | null {
  const { etag } = heldBy(request.headers);
  const fingerprint = /^"([\w-]+)\./.exec(etag ?? "")?.[1];
  return fingerprint !== undefined && etagOf(fingerprint, epoch, codingOf(request)) === etag
    ? fingerprint
    : null;
}

/** What is stored, or that the client has it already; null where it wants bytes that are not whole. */
function answerStored(
  { epoch }: AppContext,
  { request, feed }: Poll,
  stored: PolledFeed,
): Response | null {
  const coding = codingOf(request);
  const etag = etagOf(stored.print, epoch, coding);
  const headers = {
    ...feedHeaders(),
    ETag: etag,
    "Last-Modified": new Date(stored.lastModified).toUTCString(),
  };
  const { lastModified, packed } = stored;
  if (isNotModified(request.headers, { etag, lastModified })) {
    return new Response(null, { status: 304, headers });
  }
  if (packed === null) return null;
  return coding === "gzip"
    ? whole(gzipped(packed), { ...headers, ...about(feed), "Content-Encoding": "gzip" })
    : whole(new TextEncoder().encode(unpack(packed)), { ...headers, ...about(feed) });
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

function withoutStore(request: Request): Response {
  const held = heldBy(request.headers);
  if (!held.any) return unavailable();
  const etag: Record<string, string> = held.etag === null ? {} : { ETag: held.etag };
  return new Response(null, { status: 304, headers: { ...feedHeaders(), ...etag } });
}
