import { readFeed } from "../links/feeds.ts";
import { notFound, pageResponse, pictureResponse, plain } from "./answers.ts";
import { frameOf, type GardenRequest } from "./garden-request.ts";
import { offerOf } from "./link-offers.ts";
import { calendarPage, type Device } from "./pages/calendar.tsx";
import { qrPicture } from "./pages/qr.tsx";

/** The calendars of the link in hand; an owner, whose link opens everything, is led to the links to hand on. */
export function answerCalendar(gardenRequest: GardenRequest): Response {
  const { context, link, base, request } = gardenRequest;
  if (link.role === "owner") return plain(303, "See the links.\n", { Location: `${base}links` });
  const offer = offerOf({ key: context.key, ...gardenRequest }, link, base);
  const device = deviceOf(request.headers.get("user-agent") ?? "");
  return pageResponse(200, calendarPage(frameOf(gardenRequest), { device, ...offer }));
}

/** The same for a feed whose own address a browser opened: that calendar first, or the link's own where it is not offered. */
export function answerFeedPage(gardenRequest: GardenRequest, path: string): Response {
  const { context, link, base, request, origin } = gardenRequest;
  if (readFeed(link, path) === null) return notFound();
  if (link.role === "owner") return plain(303, "See the links.\n", { Location: `${base}links` });
  const { first, more } = offerOf({ key: context.key, ...gardenRequest }, link, base);
  const all = [first, ...more];
  const asked = all.find(({ address }) => address === `${origin}${base}${path}`) ?? first;
  const rest = all.filter((each) => each !== asked);
  const device = deviceOf(request.headers.get("user-agent") ?? "");
  const page = calendarPage(frameOf(gardenRequest), { device, first: asked, more: rest });
  const never = { "Cache-Control": "no-store", Vary: "Accept, Accept-Encoding" };
  return pageResponse(NOT_THE_FEED, page, never);
}

/**
 * The status of a page in a calendar's place: browsers show it, and a calendar program that is taken for one keeps what it has,
 * as it would not at a 200. Source: RFC 9110, section 15.4.1.
 */
const NOT_THE_FEED = 300;

/** The address of that page as a code for a phone's camera, in a picture of its own: to make it takes longer than the page. */
export function answerCalendarCode({ link, base, origin }: GardenRequest): Response {
  if (link.role === "owner") return notFound();
  return pictureResponse(qrPicture(`${origin}${base}calendar`));
}

/** The kind of device, by what its browser says of itself. */
export function deviceOf(userAgent: string): Device {
  if (/iPhone|iPad|Macintosh/.test(userAgent)) return "apple";
  return /Android/.test(userAgent) ? "android" : "other";
}
