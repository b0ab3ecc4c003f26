import { decodePathPart, encodePathPart, type Link, readSegment, writeSegment } from "./segment.ts";

const encoder = new TextEncoder();

/** The key that makes and checks every link of a deployment. Throws when the secret is shorter than 32 characters. */
export function keyFrom(secret: string): Promise<CryptoKey> {
  if (secret.length < 32) throw new RangeError("the secret needs 32 characters or more");
  const uses: KeyUsage[] = ["sign", "verify"];
  const how = { name: "HMAC", hash: "SHA-256" };
  return crypto.subtle.importKey("raw", encoder.encode(secret), how, false, uses);
}

/**
 * The path a link opens, `/quarry-lane/helper-imre-1/…43 characters…/`, with its closing slash. Whoever has the path
 * has what the link lets them do; nothing of it is stored.
 */
export async function pathOf(link: Link, key: CryptoKey): Promise<string> {
  const [garden, segment] = [encodePathPart(link.garden), writeSegment(link)];
  const mac = await crypto.subtle.sign("HMAC", key, textToSign(garden, segment));
  return `/${garden}/${segment}/${toBase64Url(new Uint8Array(mac))}/`;
}

/**
 * The link that three parts of a path make, as they stand in the path; null where it was never given out. Compared
 * in constant time and without a look into the store, so it can't say whether a link has been revoked.
 */
export async function checkLink(
  parts: { readonly garden: string; readonly segment: string; readonly mac: string },
  key: CryptoKey,
): Promise<Link | null> {
  const mac = fromBase64Url(parts.mac);
  const garden = decodePathPart(parts.garden);
  if (mac === null || garden === null) return null;
  const good = await crypto.subtle.verify(
    "HMAC",
    key,
    mac,
    textToSign(parts.garden, parts.segment),
  );
  return good ? readSegment(garden, parts.segment) : null;
}

/** Neither part can hold a line's end, so no two links sign the same text. */
function textToSign(garden: string, segment: string): Uint8Array<ArrayBuffer> {
  return encoder.encode(`sowbell link\n${garden}\n${segment}`);
}

/** Base64url without padding. Source: RFC 4648, section 5. */
export function toBase64Url(bytes: Uint8Array): string {
  const code = btoa(String.fromCharCode(...bytes));
  return code.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** A whole code of 32 bytes. Its last letter holds four bits, so that other letters would decode alike; none of them is taken. */
const CODE = /^[A-Za-z0-9_-]{42}[AEIMQUYcgkosw048]$/;

/** The 32 bytes of a whole code; null for anything else. */
function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | null {
  if (!CODE.test(text)) return null;
  const bytes = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
  return Uint8Array.from(bytes, (letter) => letter.charCodeAt(0));
}
