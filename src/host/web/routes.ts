import type { Role } from "../links/segment.ts";
import { answerCalendar, answerCalendarCode, answerFeedPage } from "./calendar.ts";
import { answerDiary } from "./diary.ts";
import { answerEvent } from "./event-page.ts";
import type { GardenRequest, LinkRequest } from "./garden-request.ts";
import { answerManifest, answerWorker } from "./installing.ts";
import { answerArchive, answerLeaving } from "./leaving.ts";
import { answerLinks, answerRevoke } from "./links.ts";
import { answerMore } from "./more.ts";
import { answerCheck, answerNewest, answerPlanPage, answerVersion } from "./plan-page.ts";
import { answerPlanPicture } from "./plan-picture.ts";
import { answerPlan, answerPublish } from "./plans.ts";
import {
  answerFrost,
  answerPicture,
  answerPictures,
  answerRoom,
  answerSheet,
  answerYear,
} from "./reports.ts";
import { answerRestore, answerRestoreForm } from "./restoring.ts";
import { answerTakeBack } from "./taken-back.ts";
import { answerSaid, answerToday } from "./today.ts";

/**
 * Something under a link: the path that follows the link, what may be done with it, whose it is, and its answer. What the
 * path's groups hold comes along.
 */
export type Route = {
  readonly path: RegExp;
  readonly methods: readonly string[];
  readonly who: readonly Role[];
  readonly answer: (
    gardenRequest: GardenRequest,
    ...found: readonly string[]
  ) => Response | Promise<Response>;
};

/** Methods of what is only looked at. */
export const LOOK = ["GET", "HEAD"] as const;
/** Methods of a page whose form is sent to itself. */
export const FORM = ["GET", "HEAD", "POST"] as const;

const ALL: readonly Role[] = ["owner", "helper", "reader"];
const HOUSEHOLD: readonly Role[] = ["owner", "helper"];
const OWNER: readonly Role[] = ["owner"];

/** Everything under a link that is no feed, for a garden that is there. The first whose path fits answers. */
export const ROUTES: readonly Route[] = [
  { path: /^$/, methods: LOOK, who: ALL, answer: answerToday },
  { path: /^said$/, methods: ["POST"], who: HOUSEHOLD, answer: answerSaid },
  { path: /^more$/, methods: LOOK, who: HOUSEHOLD, answer: answerMore },
  { path: /^calendar$/, methods: LOOK, who: ALL, answer: answerCalendar },
  { path: /^(.+\.ics)$/, methods: LOOK, who: ALL, answer: answerFeedPage },
  { path: /^app\.webmanifest$/, methods: LOOK, who: ALL, answer: answerManifest },
  { path: /^worker\.js$/, methods: LOOK, who: ALL, answer: answerWorker },
  { path: /^qr\.svg$/, methods: LOOK, who: ALL, answer: answerCalendarCode },
  { path: /^(on\/.+)$/, methods: FORM, who: HOUSEHOLD, answer: answerEvent },
  { path: /^diary$/, methods: FORM, who: HOUSEHOLD, answer: answerDiary },
  { path: /^diary\/back$/, methods: ["POST"], who: OWNER, answer: answerTakeBack },
  { path: /^frost$/, methods: LOOK, who: HOUSEHOLD, answer: answerFrost },
  { path: /^room$/, methods: LOOK, who: HOUSEHOLD, answer: answerRoom },
  { path: /^pictures$/, methods: LOOK, who: HOUSEHOLD, answer: answerPictures },
  { path: /^([a-z]+\.svg)$/, methods: LOOK, who: HOUSEHOLD, answer: answerPicture },
  { path: /^sheet(?:\/(\d{4}-\d{2}))?$/, methods: LOOK, who: HOUSEHOLD, answer: answerSheet },
  { path: /^year(?:\/(\d{4}))?$/, methods: LOOK, who: HOUSEHOLD, answer: answerYear },
  { path: /^plan$/, methods: LOOK, who: OWNER, answer: answerNewest },
  { path: /^plan\/(\d{4})$/, methods: FORM, who: OWNER, answer: answerPlanPage },
  { path: /^plan\/(\d{4})\/check$/, methods: ["POST"], who: OWNER, answer: answerCheck },
  {
    path: /^plan\/(\d{4})\/(season|beds)\.svg$/,
    methods: FORM,
    who: OWNER,
    answer: answerPlanPicture,
  },
  { path: /^plan\/(\d{4})\/([1-9]\d{0,8})$/, methods: LOOK, who: OWNER, answer: answerVersion },
  { path: /^links$/, methods: FORM, who: OWNER, answer: answerLinks },
  { path: /^links\/([^/]+)$/, methods: ["DELETE"], who: OWNER, answer: answerRevoke },
  { path: /^plans\/([1-9]\d{3})$/, methods: [...LOOK, "PUT"], who: OWNER, answer: answerPlanFile },
  { path: /^leaving$/, methods: FORM, who: OWNER, answer: answerLeaving },
  { path: /^restore$/, methods: ["POST"], who: OWNER, answer: answerRestoreForm },
  { path: /^archive$/, methods: ["PUT"], who: OWNER, answer: answerRestore },
  { path: /^[^/]+\.zip$/, methods: LOOK, who: OWNER, answer: answerArchive },
];

/** The route a path under a link leads to, and what its groups hold; null where there is none. */
export function routeAt(
  rest: string,
): { readonly route: Route; readonly found: readonly string[] } | null {
  for (const route of ROUTES) {
    const found = route.path.exec(rest);
    if (found) return { route: route, found: found.slice(1) };
  }
  return null;
}

/** One year's plan for programs: got with its version, or put over the version it started from. */
export async function answerPlanFile(linkRequest: LinkRequest, said: string): Promise<Response> {
  const { context, link, request } = linkRequest;
  const year = { garden: link.garden, year: Number(said) };
  if (request.method !== "PUT") return answerPlan(context, year.year);
  return answerPublish(context, year, request);
}
