import { dayAt, sayDay } from "../../base/index.ts";
import { pathOf } from "../links/mac.ts";
import { type Link, readSegment, writeSegment } from "../links/segment.ts";
import { zoneOf } from "../store/gardens.ts";
import { closeOtherOwners, type LinkUse, linkUse, revoke, showNextOwner } from "../store/links.ts";
import { json, notFound, pageResponse, plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { frameOf, type GardenRequest, type LinkRequest } from "./garden-request.ts";
import { type HandoutLink, handoutLinks, linksInUse, linksOfFormerPeople } from "./link-offers.ts";
import { type LinkEntry, type LinkPageProps, linkPage, linksPage } from "./pages/links.tsx";

/** Bytes of a form that shows or revokes a link. */
const MOST_BYTES = 2000;

/** The links in use, for the deployment to hand out. */
export async function answerAdminLinks({
  context,
  ...gardenRequest
}: GardenRequest): Promise<Response> {
  return json(200, await linksInUse({ key: context.key, ...gardenRequest }));
}

/** An owner's page of links, or what its forms ask: one shown, one revoked, one's own next one, or all others of an owner closed. */
export async function answerLinks(gardenRequest: GardenRequest): Promise<Response> {
  if (gardenRequest.request.method !== "POST") return showLinks(gardenRequest);
  const form = await formOf(gardenRequest.request, MOST_BYTES);
  const link = readSegment(gardenRequest.link.garden, form?.get("link") ?? "");
  switch (form?.get("do")) {
    case "next":
      return showNext(gardenRequest);
    case "close":
      return closeOthers(gardenRequest);
    case "show":
      return link ? showLink(gardenRequest, link) : plain(400, WHICH);
    case "revoke":
      return link ? revokeLink(gardenRequest, link) : plain(400, WHICH);
    default:
      return plain(400, WHICH);
  }
}

const WHICH = "Show or revoke which link? Look at the page of links again.\n";

function showLinks(gardenRequest: GardenRequest): Response {
  const { context, stored, request } = gardenRequest;
  const use = linkUse(context.sql);
  const linkSource = { key: context.key, ...gardenRequest };
  const rows = (links: readonly HandoutLink[]) => links.map((one) => rowOf(one, use));
  const revoked = use.revoked.map(({ link, at }) => {
    return { segment: link, day: sayDay(dayAt(at, zoneOf(stored)), true) };
  });
  const others = stored.ownerNext !== null && stored.ownerNext !== stored.owner;
  const done = new URL(request.url).searchParams.get("revoked");
  const shown = {
    rows: rows(handoutLinks(linkSource)),
    strays: rows(linksOfFormerPeople(linkSource, use.people)),
  };
  return pageResponse(
    200,
    linksPage(frameOf(gardenRequest), { ...shown, others, revoked, done: sayDone(done) }),
  );
}

/** What was just done, as a page's address says it; nothing for anything else. */
function sayDone(said: string | null): string | null {
  return said !== null && /^[\w~-]{1,200}$/.test(said) ? said : null;
}

function rowOf({ name, link }: HandoutLink, { used }: LinkUse): LinkEntry {
  const segment = writeSegment(link);
  return { name, segment, used: used.includes(segment) };
}

/** Only a link that stands on the page is shown. */
async function showLink(gardenRequest: GardenRequest, link: Link): Promise<Response> {
  const segment = writeSegment(link);
  const linkSource = { key: gardenRequest.context.key, ...gardenRequest };
  const handed = handoutLinks(linkSource).find((one) => writeSegment(one.link) === segment);
  if (!handed) return plain(400, WHICH);
  return shown(gardenRequest, link, `The link of ${handed.name}`);
}

/** Serials of an owner's next link: so many that nobody who once had a link can have made the next one beforehand. */
const SERIALS = { from: 100_000, to: 999_999 } as const;

/** Shows an owner a link to take the place of the one in hand, which goes on opening till it is closed. */
async function showNext(gardenRequest: GardenRequest): Promise<Response> {
  const { context, link } = gardenRequest;
  const [random = 0] = crypto.getRandomValues(new Uint32Array(1));
  const serial = SERIALS.from + (random % (SERIALS.to - SERIALS.from + 1));
  showNextOwner(context.sql, serial);
  return shown(gardenRequest, { ...link, serial }, "Your next link");
}

async function shown(gardenRequest: GardenRequest, link: Link, name: string): Promise<Response> {
  const { context, origin } = gardenRequest;
  const address = `${origin}${await pathOf(link, context.key)}`;
  const feed: LinkPageProps["feed"] = link.role === "owner" ? null : `${address}${feedOf(link)}`;
  const never = { "Cache-Control": "no-store" };
  return pageResponse(200, linkPage(frameOf(gardenRequest), { name, address, feed }), never);
}

function feedOf({ role, person }: Link): string {
  if (role === "reader") return "tasks.ics";
  return person === null ? "household.ics" : "sessions.ics";
}

/** Makes the link in hand the only one that opens as the owner. */
function closeOthers({ context, link, base }: GardenRequest): Response {
  closeOtherOwners(context.sql, link.serial);
  return plain(303, "Closed.\n", { Location: `${base}links` });
}

function revokeLink({ context, base }: GardenRequest, other: Link): Response {
  if (!isRevocable(other)) return plain(400, WHICH);
  const segment = writeSegment(other);
  revoke(context.sql, segment, context.now());
  return plain(303, "Revoked.\n", { Location: `${base}links?revoked=${segment}` });
}

/** Whether one by one is the way to close it; an owner's is replaced, and the deployment's stands as long as its secret. */
function isRevocable({ role }: Link): boolean {
  return role !== "owner" && role !== "admin";
}

/** Revokes one link by its part of the path, for programs; 404 for what can't be revoked so. */
export function answerRevoke({ context, link }: LinkRequest, segment: string): Response {
  const other = readSegment(link.garden, segment);
  if (other === null || !isRevocable(other)) return notFound();
  revoke(context.sql, segment, context.now());
  return json(200, { revoked: segment });
}
