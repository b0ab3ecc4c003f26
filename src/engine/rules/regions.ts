import type { Region } from "../../crops/index.ts";
import type { Site } from "../../garden/model/index.ts";

/** Zones whose region their first word does not tell. Source: the names of the IANA time zone database. */
const ZONES: Readonly<Record<string, Region>> = {
  "Europe/London": "british isles",
  "Europe/Dublin": "british isles",
  "Europe/Belfast": "british isles",
  "Europe/Isle_of_Man": "british isles",
  "Europe/Jersey": "british isles",
  "Europe/Guernsey": "british isles",
  GB: "british isles",
  Eire: "british isles",
  "Europe/Oslo": "nordic countries",
  "Europe/Stockholm": "nordic countries",
  "Europe/Helsinki": "nordic countries",
  "Europe/Mariehamn": "nordic countries",
  "Europe/Copenhagen": "nordic countries",
  "Pacific/Auckland": "new zealand",
  "Pacific/Chatham": "new zealand",
  NZ: "new zealand",
};

/** Regions by a zone's first word. */
const AREAS: Readonly<Record<string, Region>> = {
  America: "north america",
  US: "north america",
  Canada: "north america",
  Europe: "mainland europe",
  Australia: "australia",
};

/** South of this latitude America has other pests and animals. Source: house rule; about where Mexico ends. */
const NORTH_AMERICA_FROM = 14;

/** Which part of the world a garden lies in, for the pests and animals that live there; by its zone, and in America by its latitude too. */
export function regionOf({ clock, latitude }: Pick<Site, "clock" | "latitude">): Region {
  const region = ZONES[clock] ?? AREAS[clock.split("/")[0] ?? ""] ?? "elsewhere";
  const south = latitude !== null && latitude < NORTH_AMERICA_FROM;
  return region === "north america" && south ? "elsewhere" : region;
}
