import { pathOf } from "../links/mac.ts";
import { fingerprintOf, makePhrase } from "../links/phrase.ts";
import { gardenRecord } from "../store/gardens.ts";
import {
  closeOtherOwners,
  opensAsOwner,
  type Recovered,
  recoveryOf,
  storeRecovery,
} from "../store/owners.ts";
import { json, notFound, pageResponse } from "./answers.ts";
import type { GardenContext } from "./garden-context.ts";
import type { LinkRequest } from "./garden-request.ts";
import { linkPage } from "./pages/links.tsx";

/** Serials of an owner's next link: so many that nobody who once had a link can have made the next one beforehand. */
const SERIALS = { from: 100_000, to: 999_999 } as const;

/** A serial drawn by chance. */
export function drawSerial(): number {
  const [random = 0] = crypto.getRandomValues(new Uint32Array(1));
  return SERIALS.from + (random % (SERIALS.to - SERIALS.from + 1));
}

/** Makes a phrase for the garden in place of any earlier one, and gives it, the only time it is to be had. */
export async function giveRecovery(
  { sql, key, now }: Pick<GardenContext, "sql" | "key" | "now">,
  garden: string,
): Promise<string> {
  const phrase = await makePhrase(garden, key);
  storeRecovery(sql, { fingerprint: fingerprintOf(phrase), madeAt: now() });
  return phrase;
}

/**
 * Lets an owner in again by the garden's phrase, whoever has shut them out: a link of a new serial opens, every other owner's is closed,
 * and another phrase takes the place of the one that was used. Null where it is not the garden's.
 */
export async function recover(
  context: Pick<GardenContext, "sql" | "key" | "now">,
  garden: string,
  phrase: string,
): Promise<Recovered | null> {
  const { sql } = context;
  if (recoveryOf(sql)?.fingerprint !== fingerprintOf(phrase)) return null;
  const next = await makePhrase(garden, context.key);
  const serial = drawSerial();
  return sql.transaction(() => {
    // Two that come at once with one phrase: it is used up by the first.
    if (recoveryOf(sql)?.fingerprint !== fingerprintOf(phrase)) return null;
    closeOtherOwners(sql, serial);
    storeRecovery(sql, { fingerprint: fingerprintOf(next), madeAt: context.now() });
    return { serial, phrase: next };
  });
}

/**
 * By the deployment's key: the link that alone opens as the owner from now on. The phrase goes, since whoever shut the owner out may
 * have made it.
 */
export async function answerReplaceOwner({ context, link }: LinkRequest): Promise<Response> {
  const { sql, key } = context;
  if (gardenRecord(sql) === null) return notFound();
  const serial = drawSerial();
  sql.transaction(() => {
    closeOtherOwners(sql, serial);
    storeRecovery(sql, null);
  });
  return json(200, { owner: await pathOf({ ...link, role: "owner", serial }, key) });
}

/**
 * The owner's link of a garden that was just made, and its recovery phrase; null where that serial opens nothing any more, as when
 * the owner has taken another since.
 */
export async function ownersPage(
  { context, link, origin }: LinkRequest,
  serial: number,
): Promise<Response | null> {
  if (!opensAsOwner(context.sql, serial)) return null;
  const { garden } = link;
  const owner = { garden, role: "owner", person: null, serial } as const;
  const address = `${origin}${await pathOf(owner, context.key)}`;
  const recovery = { garden, phrase: await giveRecovery(context, garden) };
  const page = linkPage(null, { name: "Your garden's own link", address, feed: null, recovery });
  return pageResponse(200, page, { "Cache-Control": "no-store" });
}
