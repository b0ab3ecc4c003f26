/** A request of a service: its address, who asks, and the `Last-Modified` of the answer that is known; null: none is. */
export type AnswerRequest = {
  readonly url: string;
  readonly userAgent: string;
  readonly knownSince: string | null;
};

/** Instants in ms since 1970 UTC; null where the service does not say. */
export type ServiceHeaders = {
  readonly lastModified: string | null;
  readonly expiresAt: number | null;
  readonly retryAt: number | null;
};

/** What came back: a text, that nothing is new, or why nothing can be used. */
export type FetchedAnswer = ServiceHeaders &
  (
    | { readonly kind: "text"; readonly text: string }
    | { readonly kind: "unchanged" }
    | { readonly kind: "failed"; readonly fault: string }
  );

/** How a request goes out; the platform's own `fetch`, or another in its place. */
export type Fetch = (url: string, init: RequestInit) => Promise<Response>;

/** The longest wait for an answer [ms], and the most of it that is read [bytes]. Source: house rule: ten times what they send. */
const [MOST_MS, MOST_BYTES] = [10_000, 1024 * 1024];

/** Asks a service once. Never throws: whatever goes wrong is said. `now` in ms since 1970 UTC. */
export async function fetchAnswer(
  { url, userAgent, knownSince }: AnswerRequest,
  { fetch, now }: { readonly fetch: Fetch; readonly now: number },
): Promise<FetchedAnswer> {
  const headers = {
    "User-Agent": userAgent,
    Accept: "application/json",
    ...(knownSince !== null && { "If-Modified-Since": knownSince }),
  };
  try {
    const signal = AbortSignal.timeout(MOST_MS);
    // An answer from elsewhere than where we asked is none.
    const response = await fetch(url, { headers, signal, redirect: "manual" });
    return await answerOf(response, now);
  } catch (error) {
    const late = error instanceof Error && error.name === "TimeoutError";
    return failed(late ? "no answer in time" : "not reached", NO_HEADERS);
  }
}

/** Of an answer without any. */
export const NO_HEADERS: ServiceHeaders = { lastModified: null, expiresAt: null, retryAt: null };

const failed = (fault: string, headers: ServiceHeaders): FetchedAnswer => ({
  ...{ kind: "failed", fault },
  ...headers,
});

async function answerOf(response: Response, now: number): Promise<FetchedAnswer> {
  const headers = headersOf(response.headers, now);
  if (response.status === 304) return { kind: "unchanged", ...headers };
  if (response.status !== 200 && response.status !== 203) {
    await response.body?.cancel();
    return failed(`answered ${response.status}`, headers);
  }
  const text = await textWithin(response, MOST_BYTES);
  return text === null ? failed("too long", headers) : { kind: "text", text, ...headers };
}

function headersOf(headers: Headers, now: number): ServiceHeaders {
  return {
    lastModified: headers.get("Last-Modified"),
    expiresAt: instantIn(headers.get("Expires")),
    retryAt: retryAtOf(headers.get("Retry-After"), now),
  };
}

function instantIn(text: string | null): number | null {
  const instant = Date.parse(text ?? "");
  return Number.isFinite(instant) ? instant : null;
}

/** Source: RFC 9110, section 10.2.3: seconds or a date. */
function retryAtOf(text: string | null, now: number): number | null {
  return text !== null && /^\d{1,9}$/.test(text) ? now + Number(text) * 1000 : instantIn(text);
}

/** The body as text; null where it is longer than that many bytes, of which no more is read. */
async function textWithin(response: Response, most: number): Promise<string | null> {
  const reader = response.body?.getReader();
  if (reader === undefined) return "";
  const decoder = new TextDecoder();
  let [text, size] = ["", 0];
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    size += value.byteLength;
    if (size > most) {
      await reader.cancel();
      return null;
    }
    text += decoder.decode(value, { stream: true });
  }
}
