import { type Context, Hono } from "hono";
import { readFeed } from "../links/feeds.ts";
import { checkLink } from "../links/mac.ts";
import type { Link } from "../links/segment.ts";
import { databaseFor } from "../store/databases.ts";
import { notAllowed, notFound, pageResponse, plain, unavailable, withPages } from "./answers.ts";
import type { AppContext } from "./app-context.ts";
import { ICON_SVG, STYLESHEET } from "./assets.ts";
import { answerInvitation } from "./begin.ts";
import { isFromHere, isHere } from "./body.ts";
import { answerPoll } from "./feed.ts";
import { type LinkRequest, openGarden } from "./garden-request.ts";
import { answerUnauthorized, rateLimited } from "./limits.ts";
import { answerAdminLinks, answerRevoke } from "./links.ts";
import { forget } from "./memory.ts";
import { ICON } from "./pages/frame.tsx";
import { frontPage } from "./pages/front.tsx";
import { PLAN_SCRIPT } from "./pages/plan.tsx";
import { PLAN_JS } from "./plan-script.ts";
import { answerPlanFile, FORM, LOOK, routeAt } from "./routes.ts";

type Here = { Bindings: AppContext; Variables: { url: URL } };
type HonoContext = Context<Here>;

/**
 * Every route. Its bindings are the shell, so that a clock, a store and a core can be passed in:
 * `app.fetch(request, shell, context)`. A link is checked before anything is looked up, and what a path's shape alone
 * refuses (a wrong method) is refused alike for good links and bad. What lies under a link stands in places.ts.
 */
export const app = new Hono<Here>()
  .use(async (c, next) => {
    const url = new URL(c.req.url);
    c.set("url", url);
    const secure = isSecure(c.req.raw, url);
    if (!secure && !isHere(url.hostname)) return secured(url);
    await next();
    if (secure) c.res.headers.set("Strict-Transport-Security", "max-age=31536000");
  })
  .use(async (c, next) => {
    const allow = allowed(c.get("url").pathname);
    if (!allow.includes(c.req.method)) return notAllowed(allow.join(", "));
    if (isWrite(c.req.raw) && !isFromHere(c.req.raw)) return plain(403, "Not from there.\n");
    await next();
  })
  .get("/", () => pageResponse(200, frontPage()))
  .get("/healthz", () => plain(200, "ok\n"))
  .get("/robots.txt", () => plain(200, "User-agent: *\nDisallow:\n"))
  .get("/paper.css", () => withPages("css", STYLESHEET))
  .get(ICON, () => withPages("svg+xml", ICON_SVG))
  .get(PLAN_SCRIPT, () => withPages("javascript", PLAN_JS))
  .all("/:garden/:link/:mac/*", answerLink)
  .notFound(notFound)
  .onError((error) => {
    console.error("a request failed:", error);
    return unavailable();
  });

/** A path in its parts as they were sent: nothing is decoded, so that a path re-spelt is another path. */
const PATH = /^\/([^/]+)\/([^/]+)\/([^/]+)(?:\/(.*))?$/;

/** An invitation's page takes a form where a garden's own takes none. */
const INVITED = /^\/[^/]+\/invitation-[^/]+\/[^/]+(?:\/(?:check)?)?$/;

function allowed(path: string): readonly string[] {
  if (path.endsWith(".ics")) return LOOK;
  if (INVITED.test(path)) return FORM;
  return routeAt(PATH.exec(path)?.[4] ?? "")?.route.methods ?? LOOK;
}

async function answerLink(c: HonoContext): Promise<Response> {
  const [, garden = "", segment = "", mac = "", rest = ""] = PATH.exec(c.get("url").pathname) ?? [];
  const link = await checkLink({ garden, segment, mac }, c.env.key);
  const db = link && databaseFor(c.env.databases, link.garden);
  if (link?.role === "admin" && db === null) return plain(404, UNBOUND);
  if (link === null || db === null) return answerUnauthorized(c.env, c.req.raw);
  const linkRequest = linkRequestOf(c, { ...c.env, db }, link);
  const feed = readFeed(link, rest);
  const answer = feed
    ? await answerPoll(linkRequest.context, { ...linkRequest, feed })
    : await answerPages(linkRequest, rest);
  return answer ?? answerUnauthorized(c.env, c.req.raw);
}

/** For the deployment alone, which may have named a garden's folder so without meaning it. */
const UNBOUND =
  "A name that ends in -- and a number lies in the database of that number, which is not bound here.\n";

function isWrite({ method }: Request): boolean {
  return method !== "GET" && method !== "HEAD";
}

function linkRequestOf(c: HonoContext, context: AppContext, link: Link): LinkRequest {
  const origin = context.origin ?? c.get("url").origin;
  const behind = (work: Promise<unknown>) => c.executionCtx.waitUntil(work);
  return { context, link, origin, request: c.req.raw, behind };
}

/** What is no feed; null where the link opens nothing, or no more. */
async function answerPages(linkRequest: LinkRequest, rest: string): Promise<Response | null> {
  const { context, link, request } = linkRequest;
  const writes = isWrite(request);
  const limited = writes ? await rateLimited(context, link) : null;
  if (limited !== null) return limited;
  const answer = await answerRole(linkRequest, rest);
  if (writes && context.memory) forget(context.memory, link.garden);
  return answer;
}

async function answerRole(linkRequest: LinkRequest, rest: string): Promise<Response | null> {
  const { link } = linkRequest;
  if (link.role === "admin") return answerAdmin(linkRequest, rest);
  if (link.role === "invitation") return answerInvitation(linkRequest, rest);
  const gardenRequest = await openGarden(linkRequest);
  if (gardenRequest === null) return null;
  const at = routeAt(rest);
  return at?.route.who.includes(link.role)
    ? at.route.answer(gardenRequest, ...at.found)
    : notFound();
}

const PLAN_FILE = /^plans\/([1-9][0-9]{3})$/;
const A_LINK = /^links\/([^/]+)$/;

/** The deployment's own: to bring plans in, of gardens that are not there yet too, and to give links out and revoke them. */
async function answerAdmin(linkRequest: LinkRequest, rest: string): Promise<Response | null> {
  const year = PLAN_FILE.exec(rest)?.[1];
  if (year !== undefined) return answerPlanFile(linkRequest, year);
  const other = A_LINK.exec(rest)?.[1];
  if (other !== undefined) return answerRevoke(linkRequest, other);
  const gardenRequest = rest === "links" ? await openGarden(linkRequest) : null;
  return gardenRequest === null ? notFound() : answerAdminLinks(gardenRequest);
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
