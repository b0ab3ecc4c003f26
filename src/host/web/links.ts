import { dayAt, sayDay } from "../../base/index.ts";
import { pathOf } from "../links/mac.ts";
import { fingerprintOf, readPhrase } from "../links/phrase.ts";
import { type Link, readSegment, writeSegment } from "../links/segment.ts";
import { zoneOf } from "../store/gardens.ts";
import { type LinkUse, linkUse, revoke } from "../store/links.ts";
import { closeOtherOwners, hasOtherOwners, recoveryOf, showNextOwner } from "../store/owners.ts";
import { json, notFound, pageResponse, plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { frameOf, type GardenRequest, type LinkRequest } from "./garden-request.ts";
import { type HandoutLink, handoutLinks, linksInUse, linksOfFormerPeople } from "./link-offers.ts";
import {
  type LinkEntry,
  type LinkPageProps,
  linkPage,
  linksPage,
  phrasePage,
} from "./pages/links.tsx";
import { drawSerial, giveRecovery } from "./recovery.ts";

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
    case "phrase":
      return makeRecovery(gardenRequest, form.get("phrase") ?? "");
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
  const { context, link, stored, request } = gardenRequest;
  const use = linkUse(context.sql);
  const linkSource = { key: context.key, ...gardenRequest };
  const rows = (links: readonly HandoutLink[]) => links.map((one) => rowOf(one, use));
  const revoked = use.revoked.map(({ link, at }) => {
    return { segment: link, day: sayDay(dayAt(at, zoneOf(stored)), true) };
  });
  const others = hasOtherOwners(context.sql, link.serial);
  const done = new URL(request.url).searchParams.get("revoked");
  const made = recoveryOf(context.sql);
  const recovery = made && sayDay(dayAt(made.madeAt, zoneOf(stored)), true);
  const shown = {
    rows: rows(handoutLinks(linkSource)),
    strays: rows(linksOfFormerPeople(linkSource, use.people)),
  };
  return pageResponse(
    200,
    linksPage(frameOf(gardenRequest), { ...shown, others, recovery, revoked, done: sayDone(done) }),
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

/** Shows an owner a link to take the place of the one in hand, which goes on opening till it is closed. */
async function showNext(gardenRequest: GardenRequest): Promise<Response> {
  const { context, link } = gardenRequest;
  const serial = drawSerial();
  showNextOwner(context.sql, serial, context.now());
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

/**
 * Makes a recovery phrase and shows it this once. Where there is one already, it takes that one: whoever only has the link can't
 * take the way back from its owner.
 */
async function makeRecovery(gardenRequest: GardenRequest, typed: string): Promise<Response> {
  const { context, link } = gardenRequest;
  const had = recoveryOf(context.sql);
  const phrase = had && (await readPhrase(link.garden, typed, context.key));
  if (had !== null && (phrase === null || fingerprintOf(phrase) !== had.fingerprint))
    return plain(403, "That is not the garden's phrase. Whoever runs this Sowbell can void it.\n");
  const made = await giveRecovery(context, link.garden);
  const page = phrasePage(frameOf(gardenRequest), link.garden, made);
  return pageResponse(200, page, { "Cache-Control": "no-store" });
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
