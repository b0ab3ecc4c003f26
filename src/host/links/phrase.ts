import { createHash, timingSafeEqual } from "node:crypto";

/** Letters of a phrase. Source: RFC 4648, section 6, in lower case. */
const LETTERS = "abcdefghijklmnopqrstuvwxyz234567";

/** Letters drawn by chance, 80 bits, and those that vouch for them, 40 bits. */
const [DRAWN, VOUCHING] = [16, 8];

/**
 * A new phrase by which an owner who is shut out is let in again: `k7q2 x4mb …`, six groups of four. Its last eight letters vouch for
 * the rest by the deployment's key, so that a made-up one never reaches a garden. Nothing of it is to be stored but its fingerprint.
 */
export async function makePhrase(garden: string, key: CryptoKey): Promise<string> {
  const drawn = [...crypto.getRandomValues(new Uint8Array(DRAWN))].map(
    (each) => LETTERS[each & 31],
  );
  const letters = drawn.join("");
  return groups(letters + (await vouchFor(garden, letters, key)));
}

/** What somebody typed as a phrase of that garden, in its one spelling; null where the deployment never made it. */
export async function readPhrase(
  garden: string,
  typed: string,
  key: CryptoKey,
): Promise<string | null> {
  const letters = plainly(typed);
  if (letters.length !== DRAWN + VOUCHING) return null;
  const vouching = await vouchFor(garden, letters.slice(0, DRAWN), key);
  const same = timingSafeEqual(Buffer.from(letters.slice(DRAWN)), Buffer.from(vouching));
  return same ? groups(letters) : null;
}

/** What is stored of a phrase. */
export function fingerprintOf(phrase: string): string {
  return createHash("sha256").update(`sowbell recovery\n${phrase}`).digest("base64url");
}

async function vouchFor(garden: string, letters: string, key: CryptoKey): Promise<string> {
  const text = new TextEncoder().encode(`sowbell recovery\n${garden}\n${letters}`);
  const mac = new Uint8Array(await crypto.subtle.sign("HMAC", key, text));
  return [...mac.subarray(0, VOUCHING)].map((each) => LETTERS[each & 31]).join("");
}

/** Figures that are none of the letters stand for those they look like. */
const ALIKE: Readonly<Record<string, string>> = { "0": "o", "1": "l", "8": "b" };

function plainly(typed: string): string {
  const short = typed
    .slice(0, 200)
    .toLowerCase()
    .replaceAll(/[^a-z0-9]/g, "");
  return short.replaceAll(/[018]/g, (figure) => ALIKE[figure] ?? "");
}

const groups = (letters: string) => letters.replaceAll(/(.{4})(?=.)/g, "$1 ");
