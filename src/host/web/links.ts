import { sayDay } from "../../base/days/day.ts";
import { dayAt } from "../../base/days/instants.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, readSegment, writeSegment } from "../links/segment.ts";
import { zoneOf } from "../store/gardens.ts";
import { keepOneOwner, type LinkUse, linkUse, revoke, showNextOwner } from "../store/links.ts";
import { json, notFound, page, plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { linksInUse, linksOfStrays, linksToHand, type ToHand } from "./handing.ts";
import { linkPage, linksPage, type Row, type Shown } from "./pages/links.tsx";
import { frameOf, type Knock, type Visit } from "./visit.ts";

/** Bytes of a form that shows or revokes a link. */
const MOST_BYTES = 2000;

/** The links in use, for the deployment to hand out. */
export async function answerKeepersLinks({ shell, ...visit }: Visit): Promise<Response> {
  return json(200, await linksInUse({ key: shell.key, ...visit }));
}

/** An owner's page of links, or what its forms ask: one shown, one revoked, one's own next one, or all others of an owner closed. */
export async function answerLinks(visit: Visit): Promise<Response> {
  if (visit.request.method !== "POST") return showLinks(visit);
  const form = await formOf(visit.request, MOST_BYTES);
  const link = readSegment(visit.link.garden, form?.get("link") ?? "");
  switch (form?.get("do")) {
    case "next":
      return showNext(visit);
    case "close":
      return closeOthers(visit);
    case "show":
      return link ? showLink(visit, link) : plain(400, WHICH);
    case "revoke":
      return link ? revokeLink(visit, link) : plain(400, WHICH);
    default:
      return plain(400, WHICH);
  }
}

const WHICH = "Show or revoke which link? Look at the page of links again.\n";

async function showLinks(visit: Visit): Promise<Response> {
  const { shell, link, stored, request } = visit;
  const use = await linkUse(shell.db, link.garden);
  const giving = { key: shell.key, ...visit };
  const rows = (links: readonly ToHand[]) => links.map((one) => rowOf(one, use));
  const revoked = use.revoked.map(({ link, at }) => {
    return { segment: link, day: sayDay(dayAt(at, zoneOf(stored)), true) };
  });
  const others = stored.ownerNext !== null && stored.ownerNext !== stored.owner;
  const done = new URL(request.url).searchParams.get("revoked");
  const shown = {
    rows: rows(linksToHand(giving)),
    strays: rows(linksOfStrays(giving, use.people)),
  };
  return page(200, linksPage(frameOf(visit), { ...shown, others, revoked, done: sayDone(done) }));
}

/** What was just done, as a page's address says it; nothing for anything else. */
function sayDone(said: string | null): string | null {
  return said !== null && /^[\w~-]{1,200}$/.test(said) ? said : null;
}

function rowOf({ name, link }: ToHand, { used }: LinkUse): Row {
  const segment = writeSegment(link);
  return { name, segment, used: used.includes(segment) };
}

/** Only a link that stands on the page is shown. */
async function showLink(visit: Visit, link: Link): Promise<Response> {
  const segment = writeSegment(link);
  const giving = { key: visit.shell.key, ...visit };
  const handed = linksToHand(giving).find((one) => writeSegment(one.link) === segment);
  if (!handed) return plain(400, WHICH);
  return shown(visit, link, `The link of ${handed.name}`);
}

/** Serials of an owner's next link: so many that nobody who once had a link can have made the next one beforehand. */
const SERIALS = { from: 100_000, to: 999_999 } as const;

/** Shows an owner a link to take the place of the one in hand, which goes on opening till it is closed. */
async function showNext(visit: Visit): Promise<Response> {
  const { shell, link } = visit;
  const [random = 0] = crypto.getRandomValues(new Uint32Array(1));
  const serial = SERIALS.from + (random % (SERIALS.to - SERIALS.from + 1));
  await showNextOwner(shell.db, link.garden, serial);
  return shown(visit, { ...link, serial }, "Your next link");
}

async function shown(visit: Visit, link: Link, name: string): Promise<Response> {
  const { shell, origin } = visit;
  const address = `${origin}${await pathOf(link, shell.key)}`;
  const feed: Shown["feed"] = link.role === "owner" ? null : `${address}${feedOf(link)}`;
  const never = { "Cache-Control": "no-store" };
  return page(200, linkPage(frameOf(visit), { name, address, feed }), never);
}

function feedOf({ role, person }: Link): string {
  if (role === "reader") return "tasks.ics";
  return person === null ? "household.ics" : "sessions.ics";
}

/** Makes the link in hand the only one that opens as the owner. */
async function closeOthers({ shell, link, base }: Visit): Promise<Response> {
  await keepOneOwner(shell.db, link.garden, link.serial);
  return plain(303, "Closed.\n", { Location: `${base}links` });
}

async function revokeLink({ shell, link, base }: Visit, other: Link): Promise<Response> {
  if (!isRevocable(other)) return plain(400, WHICH);
  const segment = writeSegment(other);
  await revoke(shell.db, link.garden, segment, shell.now());
  return plain(303, "Revoked.\n", { Location: `${base}links?revoked=${segment}` });
}

/** Whether one by one is the way to close it; an owner's is replaced, and the deployment's stands as long as its secret. */
function isRevocable({ role }: Link): boolean {
  return role !== "owner" && role !== "keeper";
}

/** Revokes one link by its part of the path, for programs; 404 for what can't be revoked so. */
export async function answerRevoke({ shell, link }: Knock, segment: string): Promise<Response> {
  const other = readSegment(link.garden, segment);
  if (other === null || !isRevocable(other)) return notFound();
  await revoke(shell.db, link.garden, segment, shell.now());
  return json(200, { revoked: segment });
}
