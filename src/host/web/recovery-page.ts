import { pathOf } from "../links/mac.ts";
import { readPhrase } from "../links/phrase.ts";
import { pageResponse, tooOften } from "./answers.ts";
import type { AppContext } from "./app-context.ts";
import { formOf } from "./body.ts";
import { isWithinLimit, PERIOD_S } from "./limits.ts";
import { recoveredPage, recoveryPage } from "./pages/recovery.tsx";

/** Bytes of the form. */
const MOST_BYTES = 4000;

/** The page that takes a phrase, open to everybody, and what it leads to. A wrong one looks the same whatever is wrong with it. */
export async function answerRecovery(context: AppContext, request: Request): Promise<Response> {
  if (request.method !== "POST") return pageResponse(200, recoveryPage(false));
  const form = await formOf(request, MOST_BYTES);
  const garden = (form?.get("garden") ?? "").trim();
  const phrase =
    garden === "" ? null : await readPhrase(garden, form?.get("phrase") ?? "", context.key);
  const recovered = phrase && (await context.gardenOf(garden).recover(garden, phrase));
  if (!recovered)
    return (await isWithinLimit(context, request))
      ? pageResponse(403, recoveryPage(true))
      : tooOften(PERIOD_S);
  const owner = { garden, role: "owner", person: null, serial: recovered.serial } as const;
  const origin = context.origin ?? new URL(request.url).origin;
  const address = `${origin}${await pathOf(owner, context.key)}`;
  const page = recoveredPage({ garden, address, phrase: recovered.phrase });
  return pageResponse(200, page, { "Cache-Control": "no-store" });
}
