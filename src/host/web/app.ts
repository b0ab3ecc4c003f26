import { type Context, Hono } from "hono";
import { readFeed } from "../links/feeds.ts";
import { checkLink } from "../links/mac.ts";
import type { Link } from "../links/segment.ts";
import { notAllowed, notFound, pageResponse, plain, unavailable, withPages } from "./answers.ts";
import type { AppContext } from "./app-context.ts";
import { ICON_SVG, STYLESHEET } from "./assets.ts";
import { isFromHere, isHere, isWrite, withBodyRead } from "./body.ts";
import { answerFeed } from "./feed.ts";
import { answerUnauthorized } from "./limits.ts";
import { ICON } from "./pages/frame.tsx";
import { frontPage } from "./pages/front.tsx";
import { PLAN_SCRIPT } from "./pages/plan.tsx";
import { PLAN_JS } from "./plan-script.ts";
import { FORM, LOOK, routeAt } from "./routes.ts";
import { MOST_CARRIED } from "./saving.ts";

type Here = { Bindings: AppContext; Variables: { url: URL } };
type HonoContext = Context<Here>;

/**
 * Every route. Its bindings are the context, so that gardens can be passed in: `app.fetch(request, context)`. A link is checked
 * before its garden's object is called, and what a path's shape alone refuses (a wrong method) is refused alike for good links
 * and bad. What lies under a link stands in routes.ts.
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
  const { env: context, req } = c;
  const [, garden = "", segment = "", mac = "", rest = ""] = PATH.exec(c.get("url").pathname) ?? [];
  const link = await checkLink({ garden, segment, mac }, context.key);
  const feed = link && readFeed(link, rest);
  const answer =
    link &&
    (feed
      ? await answerFeed(context, { request: req.raw, link, feed })
      : await pass(c, link, rest));
  return answer ?? answerUnauthorized(context, req.raw);
}

/** Passes what is no feed on to the garden's object. */
async function pass(c: HonoContext, link: Link, rest: string): Promise<Response | null> {
  const origin = c.env.origin ?? c.get("url").origin;
  const visit = { link, rest, origin, zone: c.req.raw.cf?.timezone ?? null };
  const { raw } = c.req;
  const request = isWrite(raw) ? await withBodyRead(raw, MOST_CARRIED) : raw;
  const answer = await c.env.gardenOf(link.garden).visit(visit, request);
  return answer && new Response(answer.body, answer);
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
