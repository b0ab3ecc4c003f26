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
