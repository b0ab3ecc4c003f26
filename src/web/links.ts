import { sayDay } from "../days/day.ts";
import { dayAt } from "../days/instants.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, readSegment, writeSegment } from "../links/segment.ts";
import { zoneOf } from "../store/gardens.ts";
import { type LinkUse, linkUse, revoke } from "../store/links.ts";
import { json, notFound, page, plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { linksInUse, linksToHand } from "./handing.ts";
import { linkPage, linksPage, type Row } from "./pages/links.tsx";
import { frameOf, type Knock, type Visit } from "./visit.ts";

/** Bytes of a form that shows or revokes a link. */
const MOST_BYTES = 2000;

/** The links in use, for the deployment to hand out. */
export async function answerKeepersLinks({ shell, ...visit }: Visit): Promise<Response> {
  return json(200, await linksInUse({ key: shell.key, ...visit }));
}

/** An owner's page of links, or one of them shown or revoked by its form. */
export async function answerLinks(visit: Visit): Promise<Response> {
  if (visit.request.method !== "POST") return showLinks(visit);
  const form = await formOf(visit.request, MOST_BYTES);
  const link = readSegment(visit.link.garden, form?.get("link") ?? "");
  const said = form?.get("do");
  if (link === null || (said !== "show" && said !== "revoke"))
    return plain(400, "Show or revoke which link?\n");
  return said === "show" ? showLink(visit, link) : revokeLink(visit, link);
}

async function showLinks(visit: Visit): Promise<Response> {
  const { shell, link, stored } = visit;
  const use = await linkUse(shell.db, link.garden);
  const giving = { key: shell.key, ...visit };
  const rows = linksToHand(giving).map(({ name, link }) => rowOf(name, writeSegment(link), use));
  const older = Array.from({ length: link.serial - 1 }, (_, at) => ({ ...link, serial: at + 1 }))
    .map(writeSegment)
    .filter((segment) => !visit.revoked.includes(segment))
    .map((segment) => rowOf(`Your older link ${segment}`, segment, use));
  const named = rows.map(({ segment }) => segment);
  const strays = use.used
    .filter((segment) => !named.includes(segment) && !segment.startsWith("owner-"))
    .filter((segment) => !visit.revoked.includes(segment))
    .map((segment) => rowOf(segment, segment, use));
  const revoked = use.revoked.map(({ link, at }) => {
    return { segment: link, day: sayDay(dayAt(at, zoneOf(stored)), true) };
  });
  const next = writeSegment({ ...link, serial: link.serial + 1 });
  return page(200, linksPage(frameOf(visit), { rows, older, strays, next, revoked }));
}

function rowOf(name: string, segment: string, { used }: LinkUse): Row {
  return { name, segment, used: used.includes(segment) };
}

/** Only a link that stands on the page is shown: one in use, or the next of one's own. */
async function showLink(visit: Visit, link: Link): Promise<Response> {
  const { shell, origin } = visit;
  const segment = writeSegment(link);
  const handed = linksToHand({ key: shell.key, ...visit }).find(
    (one) => writeSegment(one.link) === segment,
  );
  const own = writeSegment({ ...visit.link, serial: visit.link.serial + 1 }) === segment;
  if (!handed && !own)
    return plain(400, "That link is not in use. Look at the page of links again.\n");
  const address = `${origin}${await pathOf(link, shell.key)}`;
  const feed = handed ? `${address}${feedOf(link)}` : null;
  const name = handed ? `The link of ${handed.name}` : "Your next link";
  return page(200, linkPage(frameOf(visit), { name, address, feed }), {
    "Cache-Control": "no-store",
  });
}

function feedOf({ role, person }: Link): string {
  if (role === "reader") return "tasks.ics";
  return person === null ? "household.ics" : "sessions.ics";
}

/** The one that is in hand stays, since its page could not say what takes its place. */
async function revokeLink({ shell, link, request }: Visit, other: Link): Promise<Response> {
  const segment = writeSegment(other);
  const kept = segment === writeSegment(link) || other.role === "keeper";
  if (kept) return plain(400, "That link can't be revoked from here.\n");
  await revoke(shell.db, link.garden, segment, shell.now());
  return plain(303, "Revoked.\n", { Location: new URL(request.url).pathname });
}

/** Revokes one link by its part of the path, for programs; 404 for what is no link. */
export async function answerRevoke({ shell, link }: Knock, segment: string): Promise<Response> {
  const other = readSegment(link.garden, segment);
  if (other === null || other.role === "keeper") return notFound();
  await revoke(shell.db, link.garden, segment, shell.now());
  return json(200, { revoked: segment });
}
