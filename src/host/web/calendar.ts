import { page, plain } from "./answers.ts";
import { offerOf } from "./handing.ts";
import { calendarPage, type Device } from "./pages/calendar.tsx";
import { frameOf, type Visit } from "./visit.ts";

/** The calendars of the link in hand; an owner, whose link opens everything, is led to the links to hand on. */
export function answerCalendar(visit: Visit): Response {
  const { shell, link, base, origin, request } = visit;
  if (link.role === "owner") return plain(303, "See the links.\n", { Location: `${base}links` });
  const offer = offerOf({ key: shell.key, ...visit }, link, base);
  const device = deviceOf(request.headers.get("user-agent") ?? "");
  const shown = { device, page: `${origin}${base}calendar`, ...offer };
  return page(200, calendarPage(frameOf(visit), shown));
}

/** The kind of device, by what its browser says of itself. */
export function deviceOf(userAgent: string): Device {
  if (/iPhone|iPad|Macintosh/.test(userAgent)) return "apple";
  return /Android/.test(userAgent) ? "android" : "other";
}
