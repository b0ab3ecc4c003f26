/** A request's body as text; null where it is longer than `most` bytes, and then no more of it is read. */
export async function bodyOf(request: Request, most: number): Promise<string | null> {
  const decoder = new TextDecoder();
  let [text, bytes] = ["", 0];
  const reader = request.body?.getReader();
  for (let part = await reader?.read(); part?.value; part = await reader?.read()) {
    bytes += part.value.length;
    if (bytes > most) {
      await reader?.cancel();
      return null;
    }
    text += decoder.decode(part.value, { stream: true });
  }
  return text + decoder.decode();
}

/** A request with its body, or so much of that as is longer than `most` bytes by one, read to its end here, so that its line can be used again. */
export async function withBodyRead(request: Request, most: number): Promise<Request> {
  const parts: Uint8Array[] = [];
  let bytes = 0;
  const reader = request.body?.getReader();
  for (let part = await reader?.read(); part?.value; part = await reader?.read()) {
    parts.push(part.value);
    bytes += part.value.length;
    if (bytes > most) {
      await reader?.cancel();
      break;
    }
  }
  const { method, headers, url } = request;
  return new Request(url, { method, headers, body: Buffer.concat(parts).subarray(0, most + 1) });
}

/** Whether what follows a link in the path takes an archive. */
export function isArchive(rest: string): boolean {
  return rest === "archive" || rest === "restore";
}

/** Whether a host is this machine itself. */
export function isHere(host: string): boolean {
  return host === "localhost" || host === "127.0.0.1" || host === "[::1]";
}

/** A form as a page sends it; null where it is something else or longer than `most` bytes. */
export async function formOf(request: Request, most: number): Promise<URLSearchParams | null> {
  const type = request.headers.get("content-type") ?? "";
  if (!type.startsWith("application/x-www-form-urlencoded")) return null;
  const body = await bodyOf(request, most);
  return body === null ? null : new URLSearchParams(body);
}

/**
 * Whether nothing tells that a request comes from another site. Who sends it knows the link, which no other site does; pages
 * here send no referrer, so that older browsers tell no origin either.
 */
export function isFromHere(request: Request): boolean {
  const site = request.headers.get("sec-fetch-site");
  if (site !== null) return site === "same-origin";
  const origin = request.headers.get("origin");
  return origin === null || origin === "null" || origin === new URL(request.url).origin;
}

/** Whether a request changes something. */
export function isWrite({ method }: Request): boolean {
  return method !== "GET" && method !== "HEAD";
}
