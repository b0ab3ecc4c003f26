import { pageResponse, plain } from "./answers.ts";
import { frameOf, type GardenRequest } from "./garden-request.ts";
import { offerOf } from "./link-offers.ts";
import { calendarPage, type Device } from "./pages/calendar.tsx";

/** The calendars of the link in hand; an owner, whose link opens everything, is led to the links to hand on. */
export function answerCalendar(gardenRequest: GardenRequest): Response {
  const { context, link, base, origin, request } = gardenRequest;
  if (link.role === "owner") return plain(303, "See the links.\n", { Location: `${base}links` });
  const offer = offerOf({ key: context.key, ...gardenRequest }, link, base);
  const device = deviceOf(request.headers.get("user-agent") ?? "");
  const shown = { device, page: `${origin}${base}calendar`, ...offer };
  return pageResponse(200, calendarPage(frameOf(gardenRequest), shown));
}

/** The kind of device, by what its browser says of itself. */
export function deviceOf(userAgent: string): Device {
  if (/iPhone|iPad|Macintosh/.test(userAgent)) return "apple";
  return /Android/.test(userAgent) ? "android" : "other";
}
