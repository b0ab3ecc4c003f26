import { readFeed } from "../links/feeds.ts";
import { checkLink } from "../links/mac.ts";
import type { Link } from "../links/segment.ts";
import { logFailure } from "../log.ts";
import { MOST_ARCHIVE } from "../store/thinning.ts";
import {
  dots,
  notAllowed,
  notFound,
  pageResponse,
  plain,
  unavailable,
  withPages,
} from "./answers.ts";
import type { AppContext } from "./app-context.ts";
import { ICON_SIZES, iconPng } from "./app-icon.ts";
import { ICON_SVG, STYLESHEET } from "./assets.ts";
import { isArchive, isFromHere, isHere, isWrite, withBodyRead } from "./body.ts";
import { answerFeed } from "./feed.ts";
import { answerUnauthorized } from "./limits.ts";
import { asksForPage, forPerson, withTag } from "./negotiating.ts";
import { PAGE_JS } from "./page-script.ts";
import { ICON, PAGE_SCRIPT } from "./pages/frame.tsx";
import { frontPage } from "./pages/front.tsx";
import { PLAN_SCRIPT } from "./pages/plan.tsx";
import { SHARE_SCRIPT } from "./pages/ready.tsx";
import { PLAN_JS } from "./plan-script.ts";
import { answerRecovery } from "./recovery-page.ts";
import { FORM, LOOK, routeAt } from "./routes.ts";
import { MOST_CARRIED } from "./saving.ts";
import { SHARE_JS } from "./share-script.ts";

/** A request that may be answered here, with its address and what follows the link in its path. */
type Asked = {
  readonly context: AppContext;
  readonly request: Request;
  readonly url: URL;
  readonly parts: PathParts | null;
};

/**
 * Answers a request. A link is checked before its garden's object is called, and what a path's shape alone refuses (a wrong
 * method) is refused alike for good links and bad. What lies under a link stands in routes.ts. There is no other router: a
 * library's builds its tables anew at the first request of every isolate.
 */
export async function answerRequest(request: Request, context: AppContext): Promise<Response> {
  const url = new URL(request.url);
  const secure = isSecure(request, url);
  if (!secure && !isHere(url.hostname)) return secured(url);
  const allowed = await answerAllowed({ context, request, url, parts: partsOf(url.pathname) });
  const answer = await withTag(await forPerson(allowed, request), request, context.epoch);
  if (secure) answer.headers.set("Strict-Transport-Security", "max-age=31536000");
  return request.method === "HEAD" ? new Response(null, answer) : answer;
}

async function answerAllowed(asked: Asked): Promise<Response> {
  const { request, url, parts } = asked;
  const allow = allowed(url.pathname, parts);
  if (!allow.includes(request.method)) return notAllowed(allow.join(", "));
  if (isWrite(request) && !isFromHere(request)) return plain(403, "Not from there.\n");
  try {
    return (
      (await OPEN.get(url.pathname)?.(asked)) ??
      (parts ? await answerLink(asked, parts) : notFound())
    );
  } catch (error) {
    return unavailable(logFailure("a request", error));
  }
}

/** Where a shut-out owner's phrase is taken. */
const RECOVERY = "/recover";

/** What is open to everybody, by its path. */
const OPEN: ReadonlyMap<string, (asked: Asked) => Response | Promise<Response>> = new Map<
  string,
  (asked: Asked) => Response | Promise<Response>
>([
  ["/", () => pageResponse(200, frontPage())],
  ["/healthz", () => plain(200, "ok\n")],
  [PAGE_SCRIPT, () => withPages("javascript", PAGE_JS)],
  ...ICON_SIZES.map((size) => [`/icon-${size}.png`, () => dots(iconPng(size))] as const),
  ["/robots.txt", () => plain(200, "User-agent: *\nDisallow:\n")],
  ["/paper.css", () => withPages("css", STYLESHEET)],
  [ICON, () => withPages("svg+xml", ICON_SVG)],
  [RECOVERY, ({ context, request }) => answerRecovery(context, request)],
  [PLAN_SCRIPT, () => withPages("javascript", PLAN_JS)],
  [SHARE_SCRIPT, () => withPages("javascript", SHARE_JS)],
]);

/** The three parts of a link as they were sent, and what follows it. */
type PathParts = {
  readonly garden: string;
  readonly segment: string;
  readonly mac: string;
  readonly rest: string;
};

const PATH = /^\/([^/]+)\/([^/]+)\/([^/]+)(?:\/(.*))?$/;

/** A path in its parts; nothing is decoded, so that a path re-spelt is another path. Null where it is too short for a link. */
function partsOf(path: string): PathParts | null {
  const found = PATH.exec(path);
  if (found === null) return null;
  const [, garden = "", segment = "", mac = "", rest = ""] = found;
  return { garden, segment, mac, rest };
}

function allowed(path: string, parts: PathParts | null): readonly string[] {
  if (path.endsWith(".ics")) return LOOK;
  if (path === RECOVERY) return FORM;
  const { segment = "", rest = "" } = parts ?? {};
  // An invitation's page takes a form where a garden's own takes none.
  if (segment.startsWith("invitation-") && /^(?:check|restore)?$/.test(rest)) return FORM;
  return routeAt(rest)?.route.methods ?? LOOK;
}

async function answerLink(asked: Asked, { rest, ...parts }: PathParts): Promise<Response> {
  const { context, request } = asked;
  const link = await checkLink(parts, context.key);
  const feed = link && readFeed(link, rest);
  const answer =
    link &&
    (feed && !looksAt(request)
      ? await answerFeed(context, { request, link, feed })
      : await pass(asked, link, rest));
  return answer ?? answerUnauthorized(context, request);
}

/** Whether a browser opens a feed's address: it gets the page on how to subscribe, so that nobody imports a copy by mistake. */
const looksAt = (request: Request) => request.method === "GET" && asksForPage(request.headers);

/** Passes what is no feed on to the garden's object. */
async function pass(
  { context, request, url }: Asked,
  link: Link,
  rest: string,
): Promise<Response | null> {
  const origin = context.origin ?? url.origin;
  const visit = { link, rest, origin, zone: request.cf?.timezone ?? null };
  const passed = isWrite(request) ? await withBodyRead(request, mostIn(rest)) : request;
  const answer = await context.gardenOf(link.garden).visit(visit, passed);
  return answer && new Response(answer.body, answer);
}

/** Bytes that are read of a body: an archive may be long. */
function mostIn(rest: string): number {
  return isArchive(rest) ? MOST_ARCHIVE.packed : MOST_CARRIED;
}

function isSecure(request: Request, { protocol, hostname }: URL): boolean {
  const proto = request.headers.get("x-forwarded-proto") ?? protocol.slice(0, -1);
  return proto === "https" && !isHere(hostname);
}

/** Where a request that came in the clear belongs. Feeds of `webcal://` arrive here. */
function secured(url: URL): Response {
  const there = new URL(url);
  there.protocol = "https:";
  return new Response(null, { status: 308, headers: { Location: there.href } });
}
