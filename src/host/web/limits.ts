import { type Link, writeSegment } from "../links/segment.ts";
import { notFound, tooOften } from "./answers.ts";
import type { AppContext } from "./app-context.ts";

/** After how many seconds a limit begins anew. The same period stands in wrangler.toml. */
const PERIOD_S = 60;

/**
 * The one answer to whoever has no link that opens anything: forged, revoked, never given out, or of a garden that is gone,
 * all alike. Who knocks on and on is told to wait; a good link never comes here.
 */
export async function answerUnauthorized(
  { limits }: AppContext,
  request: Request,
): Promise<Response> {
  const key = request.headers.get("cf-connecting-ip") ?? "unknown";
  const within = await isWithin(limits.unauthorized, key);
  return within ? notFound() : tooOften(PERIOD_S);
}

/** What holds a write back where its link has written too often; null where it goes on. */
export async function rateLimited({ limits }: AppContext, link: Link): Promise<Response | null> {
  const key = `${link.garden} ${writeSegment(link)}`;
  return (await isWithin(limits.writes, key)) ? null : tooOften(PERIOD_S);
}

/** A limiter that fails holds nobody back. */
async function isWithin(limiter: RateLimiter | null, key: string): Promise<boolean> {
  try {
    return limiter === null || (await limiter.limit({ key })).success;
  } catch (error) {
    console.error("a limit can't be kept:", error);
    return true;
  }
}
