import { type Link, writeSegment } from "../links/segment.ts";
import { logFailure } from "../log.ts";
import { mendDamage } from "../store/damage.ts";
import { countWrite } from "../store/writes.ts";
import { notFound, tooOften } from "./answers.ts";
import { answerInvitation } from "./begin.ts";
import { isArchive, isWrite } from "./body.ts";
import { catchUpIfOwed, type GardenContext } from "./garden-context.ts";
import { type LinkRequest, openGarden } from "./garden-request.ts";
import { answerAdminLinks, answerRevoke } from "./links.ts";
import { answerReplaceOwner } from "./recovery.ts";
import { answerRestore } from "./restoring.ts";
import { answerPlanFile, routeAt } from "./routes.ts";

/**
 * What is asked under a good link that is no feed: the link, what follows it in the path, the address that links begin with,
 * and the zone that the client seems to be in; null: not known.
 */
export type Visit = {
  readonly link: Link;
  readonly rest: string;
  readonly origin: string;
  readonly zone: string | null;
};

/** After how many seconds somebody who wrote too often may again. */
const AGAIN_S = 60;

/** Answers whatever is no feed; null where the link opens nothing, or no more. */
export async function answerVisit(
  context: GardenContext,
  { rest, ...visit }: Visit,
  request: Request,
): Promise<Response | null> {
  const { link } = visit;
  if (isWrite(request) && !countWrite(context.sql, writerOf(link), context.now()))
    return tooOften(AGAIN_S);
  const answer = await answerMended({ context, request, ...visit }, rest);
  catchUpIfOwed(context);
  return answer;
}

/** The answer; where that fails over something stored that is damaged, it is mended, the year is built, and the visit answered then. */
async function answerMended(linkRequest: LinkRequest, rest: string): Promise<Response | null> {
  const { context, request, link } = linkRequest;
  // An archive is read by nothing that could be mended.
  const again = isArchive(rest) ? null : request.clone();
  try {
    return await answerRole(linkRequest, rest);
  } catch (error) {
    if (again === null || !mendDamage(context.sql, context.now())) throw error;
    logFailure("reading what is stored, which was damaged and is mended", error, link.garden);
    await context.buildNow();
    return answerRole({ ...linkRequest, request: again }, rest);
  }
}

/** Who writes, whichever of their links it is by. */
function writerOf(link: Link): string {
  return writeSegment({ ...link, serial: 1 });
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
async function answerAdmin(linkRequest: LinkRequest, rest: string): Promise<Response> {
  const year = PLAN_FILE.exec(rest)?.[1];
  if (year !== undefined) return answerPlanFile(linkRequest, year);
  if (rest === "archive") return answerRestore(linkRequest);
  const other = A_LINK.exec(rest)?.[1];
  if (other === "owner" && linkRequest.request.method === "DELETE")
    return answerReplaceOwner(linkRequest);
  if (other !== undefined) return answerRevoke(linkRequest, other);
  const gardenRequest = rest === "links" ? await openGarden(linkRequest) : null;
  return gardenRequest === null ? notFound() : answerAdminLinks(gardenRequest);
}
