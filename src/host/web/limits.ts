import { logFailure } from "../log.ts";
import { notFound, tooOften } from "./answers.ts";
import type { AppContext } from "./app-context.ts";

/** After how many seconds a limit begins anew. The same period stands in wrangler.toml. */
export const PERIOD_S = 60;

/**
 * The one answer to whoever has no link that opens anything: forged, revoked, never given out, or of a garden that is gone,
 * all alike. Who asks on and on is told to wait; a good link never comes here.
 */
export async function answerUnauthorized(
  { unauthorized }: Pick<AppContext, "unauthorized">,
  request: Request,
): Promise<Response> {
  return (await isWithinLimit({ unauthorized }, request)) ? notFound() : tooOften(PERIOD_S);
}

/** Whether a stranger has not asked too often yet; counts this time too. A limiter that fails limits nobody. */
export async function isWithinLimit(
  { unauthorized }: Pick<AppContext, "unauthorized">,
  request: Request,
): Promise<boolean> {
  const key = request.headers.get("cf-connecting-ip") ?? "unknown";
  try {
    return unauthorized === null || (await unauthorized.limit({ key })).success;
  } catch (error) {
    logFailure("keeping a limit", error);
    return true;
  }
}
