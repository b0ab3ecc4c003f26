import { logFailure } from "../log.ts";
import { notFound, tooOften } from "./answers.ts";
import type { AppContext } from "./app-context.ts";

/** After how many seconds a limit begins anew. The same period stands in wrangler.toml. */
const PERIOD_S = 60;

/**
 * The one answer to whoever has no link that opens anything: forged, revoked, never given out, or of a garden that is gone,
 * all alike. Who asks on and on is told to wait; a good link never comes here.
 */
export async function answerUnauthorized(
  { unauthorized }: Pick<AppContext, "unauthorized">,
  request: Request,
): Promise<Response> {
  const key = request.headers.get("cf-connecting-ip") ?? "unknown";
  return (await isWithin(unauthorized, key)) ? notFound() : tooOften(PERIOD_S);
}

/** A limiter that fails limits nobody. */
async function isWithin(limiter: RateLimiter | null, key: string): Promise<boolean> {
  try {
    return limiter === null || (await limiter.limit({ key })).success;
  } catch (error) {
    logFailure("keeping a limit", error);
    return true;
  }
}
