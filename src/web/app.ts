import { type Context, Hono } from "hono";
import { readEventPath, readFeed } from "../links/feeds.ts";
import { checkLink } from "../links/mac.ts";
import { type Link, readSegment, writeSegment } from "../links/segment.ts";
import { isOpen, revoke } from "../store/gardens.ts";
import { json, notAllowed, notFound, page, plain, stylesheet, unavailable } from "./answers.ts";
import { answerPoll } from "./feed.ts";
import { answerEvent, answerHome, answerLinks, answerLooking, type Visit } from "./home.ts";
import { isLook } from "./looks.ts";
import { frontPage } from "./pages.tsx";
import { PAPER } from "./paper.ts";
import { answerPlan, answerPublish } from "./plans.ts";
import { logged, render } from "./render.ts";
import type { Shell } from "./shell.ts";
import { answerTap } from "./taps.ts";

type Here = { Bindings: Shell };
type At = Context<Here>;

/**
 * Every route. Its bindings are the shell, so that a clock, a store and a core can be passed in:
 * `app.fetch(request, shell, context)`. A link is checked before anything is looked up, and what a path's shape alone
 * refuses (a wrong method) is refused alike for good links and bad.
 */
export const app = new Hono<Here>()
  .use(async (c, next) => {
    const elsewhere = secureAddress(c.req.raw);
    if (elsewhere !== null) return new Response(null, { status: 308, headers: elsewhere });
    await next();
    if (isSecure(c.req.raw)) c.res.headers.set("Strict-Transport-Security", "max-age=31536000");
  })
  .use(async (c, next) => {
    const allow = allowed(new URL(c.req.url).pathname);
    if (!allow.split(", ").includes(c.req.method)) return notAllowed(allow);
    await next();
  })
  .get("/", () => page(200, frontPage()))
  .get("/healthz", () => plain(200, "ok\n"))
  .get("/robots.txt", () => plain(200, "User-agent: *\nDisallow:\n"))
  .get("/paper.css", () => stylesheet(PAPER))
  .all("/:garden/:link/:mac/*", answerLink)
  .notFound(notFound)
  .onError((error) => {
    console.error("a request failed:", error);
    return unavailable();
  });

/** A path in its parts as they were sent: nothing is decoded, so that a path re-spelt is another path. */
const PATH = /^\/([^/]+)\/([^/]+)\/([^/]+)(?:\/(.*))?$/;

const PLAN = /^plans\/([1-9][0-9]{3})$/;
const LINK = /^links\/([^/]+)$/;

function allowed(path: string): string {
  const rest = PATH.exec(path)?.[4] ?? "";
  if (PLAN.test(rest)) return "GET, HEAD, PUT";
  if (readEventPath(rest) !== null) return "GET, HEAD, POST";
  return LINK.test(rest) ? "DELETE" : "GET, HEAD";
}

async function answerLink(c: At): Promise<Response> {
  const [, garden = "", segment = "", mac = "", rest = ""] = PATH.exec(pathname(c)) ?? [];
  const link = await checkLink({ garden, segment, mac }, c.env.key);
  if (link === null) return notFound();
  const feed = readFeed(link, rest);
  const behind = (work: Promise<unknown>) => c.executionCtx.waitUntil(work);
  if (feed) return answerPoll(c.env, { request: c.req.raw, link, feed, behind });
  return link.role === "keeper" || PLAN.test(rest) || LINK.test(rest)
    ? answerKeeping(c, link, rest)
    : answerPage(c, link, rest);
}

function pathname(c: At): string {
  return new URL(c.req.url).pathname;
}

async function answerPage(c: At, link: Link, rest: string): Promise<Response> {
  if (rest === "") return answerHome(c.env, visitOf(c, link));
  if (isLook(rest))
    return answerLooking(c.env, link, { rest, low: new URL(c.req.url).searchParams.get("low") });
  const event = link.role === "reader" ? null : readEventPath(rest);
  if (event === null) return notFound();
  if (c.req.method !== "POST") return answerEvent(c.env, link, event);
  const answer = await answerTap(c.env, link, c.req.raw);
  if (answer.status === 303)
    c.executionCtx.waitUntil(logged(link.garden, () => render(c.env, link.garden, "stale")));
  return answer;
}

function visitOf(c: At, link: Link): Visit {
  return { link, origin: c.env.origin ?? new URL(c.req.url).origin };
}

/** Plans and links, for whoever keeps the garden: its owner, or the deployment, which may also make one. */
async function answerKeeping(c: At, link: Link, rest: string): Promise<Response> {
  const keeper = link.role === "keeper";
  if (!keeper && link.role !== "owner") return notFound();
  if (!keeper && !(await isOpen(c.env.db, link.garden, writeSegment(link)))) return notFound();
  const year = PLAN.exec(rest)?.[1];
  if (year !== undefined) return answerYear(c, { garden: link.garden, year: Number(year) });
  const other = LINK.exec(rest)?.[1];
  if (other !== undefined) return answerRevoke(c, link.garden, other);
  return rest === "links" && keeper ? answerLinks(c.env, visitOf(c, link)) : notFound();
}

async function answerYear(c: At, year: { garden: string; year: number }): Promise<Response> {
  if (c.req.method !== "PUT") return answerPlan(c.env, year);
  const answer = await answerPublish(c.env, year, c.req.raw);
  if (answer.ok) {
    c.executionCtx.waitUntil(logged(year.garden, () => render(c.env, year.garden, "stale")));
  }
  return answer;
}

async function answerRevoke(c: At, garden: string, segment: string): Promise<Response> {
  const link = readSegment(garden, segment);
  if (link === null || link.role === "keeper") return notFound();
  await revoke(c.env.db, garden, segment, c.env.now());
  return json(200, { revoked: segment });
}

function isHere(host: string): boolean {
  return host === "localhost" || host === "127.0.0.1" || host === "[::1]";
}

function isSecure(request: Request): boolean {
  const url = new URL(request.url);
  const proto = request.headers.get("x-forwarded-proto") ?? url.protocol.slice(0, -1);
  return proto === "https" && !isHere(url.hostname);
}

/** Where a request that came in the clear belongs, or null where it came well. Feeds of `webcal://` arrive here. */
function secureAddress(request: Request): { readonly Location: string } | null {
  const url = new URL(request.url);
  if (isSecure(request) || isHere(url.hostname)) return null;
  url.protocol = "https:";
  return { Location: url.href };
}
