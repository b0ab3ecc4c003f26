import type { CoverFacts, Crop, Region } from "../../crops/index.ts";
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

/** Zones of Alaska, where the beetles and borers of the rest of the continent do not live. Source: the names of the IANA time zone database. */
const ALASKAN =
  /^(?:America\/(?:Adak|Anchorage|Atka|Juneau|Metlakatla|Nome|Sitka|Yakutat)|US\/(?:Alaska|Aleutian))$/;

/** Regions by a zone's first word. */
const AREAS: Readonly<Record<string, Region>> = {
  America: "north america",
  US: "north america",
  Canada: "north america",
  Europe: "mainland europe",
  Australia: "australia",
};

/** Zones of South America, which has other pests and animals than the north. Source: the names of the IANA time zone database. */
const SOUTH_AMERICAN =
  /^America\/(?:Argentina\/.+|Araguaina|Asuncion|Bahia|Belem|Boa_Vista|Bogota|Buenos_Aires|Campo_Grande|Caracas|Cayenne|Coyhaique|Cuiaba|Eirunepe|Fortaleza|Guayaquil|Guyana|La_Paz|Lima|Maceio|Manaus|Montevideo|Noronha|Paramaribo|Porto_Velho|Punta_Arenas|Recife|Rio_Branco|Santarem|Santiago|Sao_Paulo)$/;

/** Which part of the world a garden lies in, for the pests and animals that live there; by its zone. */
export function regionOf({ clock }: Pick<Site, "clock">): Region {
  if (SOUTH_AMERICAN.test(clock)) return "elsewhere";
  if (ALASKAN.test(clock)) return "alaska";
  return ZONES[clock] ?? AREAS[clock.split("/")[0] ?? ""] ?? "elsewhere";
}

/** The covers that gardeners of a region lay over a crop against what lives there. */
export function coversIn(region: Region, { covers }: Crop): readonly CoverFacts[] {
  return covers.filter((cover) => cover.in?.includes(region) ?? true);
}
