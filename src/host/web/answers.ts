const EVERYWHERE = {
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
  "X-Robots-Tag": "noindex",
} as const;

const POLICY =
  "default-src 'none'; style-src 'self'; img-src 'self'; script-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

/** What a page carries instead whose script asks here. */
export const SCRIPTED = { "Content-Security-Policy": `${POLICY}; connect-src 'self'` } as const;

/** What a plan's page carries, whose script may show drawings that it asked for, too. */
export const SCRIPTED_WITH_DRAWING = {
  "Content-Security-Policy": `${POLICY.replace("img-src 'self'", "img-src 'self' blob:")}; connect-src 'self'`,
} as const;

/** The one answer for whatever is unknown, wrong, revoked or deleted: nothing in it tells which. */
export function notFound(): Response {
  return plain(404, "Nothing here. If this was a calendar link, ask its garden for a new one.\n");
}

/** For whoever asks too often: the seconds after which they may again. */
export function tooOften(seconds: number): Response {
  return plain(429, "Too often. Please wait a little.\n", { "Retry-After": String(seconds) });
}

/** For a method this path does not have; `allow` lists those it has. */
export function notAllowed(allow: string): Response {
  return plain(405, "Not that way.\n", { Allow: allow });
}

/** For now nothing can be answered; a calendar keeps what it has and asks again. `number` is what the log has for it, null where it has none. */
export function unavailable(number: string | null = null): Response {
  const told =
    number === null ? "" : ` If it stays so, say this number to whoever runs it: ${number}`;
  return plain(503, `Not just now. Please try again later.${told}\n`, { "Retry-After": "600" });
}

/** A short line of text, never stored on the way. */
export function plain(status: number, text: string, more: Record<string, string> = {}): Response {
  const type = { "Content-Type": "text/plain; charset=utf-8", "Cache-Control": "no-store" };
  return new Response(text, { status, headers: { ...EVERYWHERE, ...type, ...more } });
}

/** Plain values, for programs. */
export function json(status: number, value: unknown, more: Record<string, string> = {}): Response {
  const type = { "Content-Type": "application/json; charset=utf-8" };
  return plain(status, `${JSON.stringify(value)}\n`, { ...type, ...more });
}

/** A page for a person, which runs, shows and sends nothing that is not from here. */
export function pageResponse(
  status: number,
  html: string,
  more: Record<string, string> = {},
): Response {
  return plain(status, html, {
    "Content-Type": "text/html; charset=utf-8",
    "Cache-Control": "private, no-cache",
    "Content-Security-Policy": POLICY,
    ...more,
  });
}

/** Sheets and drawings bring their own style with them, and nothing else. */
const OWN_STYLE =
  "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** A sheet to be printed. */
export function paper(html: string): Response {
  return plain(200, html, {
    "Content-Type": "text/html; charset=utf-8",
    "Cache-Control": "private, no-cache",
    "Content-Security-Policy": OWN_STYLE,
  });
}

/** A drawing. */
export function pictureResponse(svg: string): Response {
  return plain(200, svg, {
    "Content-Type": "image/svg+xml; charset=utf-8",
    "Cache-Control": "private, no-cache",
    "Content-Security-Policy": OWN_STYLE,
  });
}

const TYPES = {
  css: "text/css",
  javascript: "text/javascript",
  "svg+xml": "image/svg+xml",
} as const;

/** What pages bring with them: the stylesheet, the icon, the script. */
export function withPages(kind: keyof typeof TYPES, text: string): Response {
  return plain(200, text, {
    "Content-Type": `${TYPES[kind]}; charset=utf-8`,
    "Cache-Control": "public, max-age=3600",
  });
}

/** What a link's pages ask for beside themselves, of this link alone; a worker of it asks nobody but here. */
export function withinLink(type: string, text: string): Response {
  return plain(200, text, {
    "Content-Type": `${type}; charset=utf-8`,
    "Cache-Control": "private, no-cache",
    "Content-Security-Policy": "default-src 'none'; connect-src 'self'",
  });
}

/** A drawing in dots, the same for everybody. */
export function dots(png: Uint8Array<ArrayBuffer>): Response {
  const about = { "Content-Type": "image/png", "Cache-Control": "public, max-age=86400" };
  return new Response(png, { headers: { ...EVERYWHERE, ...about } });
}

/** An archive of files, to be kept under that name and never on the way. */
export function archive(bytes: Uint8Array<ArrayBuffer>, name: string): Response {
  const about = {
    "Content-Type": "application/zip",
    "Content-Disposition": `attachment; filename="${name.replaceAll(/[^\w.-]/g, "_")}"`,
  };
  return new Response(bytes, { headers: { ...EVERYWHERE, "Cache-Control": "no-store", ...about } });
}

/** What a feed's answers carry with and without a body. */
export function feedHeaders(): Record<string, string> {
  return {
    ...EVERYWHERE,
    "Cache-Control": "private, max-age=900, stale-if-error=604800",
    Vary: "Accept, Accept-Encoding",
  };
}
