import type { WeatherService } from "../../app/index.ts";

/** A place to the tenth of a degree, about ten kilometres, south and west negative, and its clock; nothing nearer leaves. */
export type WeatherPlace = {
  readonly latitude: number;
  readonly longitude: number;
  readonly clock: string;
};

/** How a service is asked, and what its terms want to be shown. */
export type ServiceTerms = {
  readonly urlOf: (place: WeatherPlace) => string;
  /** Where the years behind a place are asked for, as of an instant [ms since 1970 UTC]; null: it has none. */
  readonly yearsUrlOf: ((place: WeatherPlace, now: number) => string) | null;
  /** Whether it only answers somebody who says how they can be reached. */
  readonly wantsContact: boolean;
  readonly attribution: string;
};

/** How many days behind and ahead, today with them, are asked for [days]. Source: house rule: a season's quarter; ten nights. */
const [DAYS_BEHIND, DAYS_AHEAD] = [92, 10];

const OPEN_METEO_DAILY = [
  "temperature_2m_min",
  "temperature_2m_max",
  "precipitation_sum",
  "wind_gusts_10m_max",
].join(",");

function openMeteoUrl({ latitude, longitude, clock }: WeatherPlace): string {
  const url = new URL("https://api.open-meteo.com/v1/forecast");
  const asked = {
    latitude: latitude.toFixed(1),
    longitude: longitude.toFixed(1),
    daily: OPEN_METEO_DAILY,
    hourly: "relative_humidity_2m",
    timezone: clock,
    wind_speed_unit: "ms",
    past_days: String(DAYS_BEHIND),
    forecast_days: String(DAYS_AHEAD),
  };
  for (const [name, value] of Object.entries(asked)) url.searchParams.set(name, value);
  return url.href;
}

/** Years that are asked for of a place. Source: WMO's usual length of a record of normals. */
const YEARS = 30;

/** Days after which the archive has a day for good. Source: from memory, unchecked: Open-Meteo, five days; house rule: a month. */
const ARCHIVED_MS = 31 * 86_400_000;

/** The last year that the archive has whole at an instant [ms since 1970 UTC]. */
export const lastWholeYear = (now: number) => new Date(now - ARCHIVED_MS).getUTCFullYear() - 1;

/** Where the archive is asked for the last thirty whole years. Source: Open-Meteo, Historical Weather API. */
function openMeteoYearsUrl(place: WeatherPlace, now: number): string {
  const to = lastWholeYear(now);
  const url = new URL("https://archive-api.open-meteo.com/v1/archive");
  const asked = {
    latitude: place.latitude.toFixed(1),
    longitude: place.longitude.toFixed(1),
    daily: "temperature_2m_min,temperature_2m_max,precipitation_sum",
    timezone: place.clock,
    start_date: `${to - YEARS + 1}-01-01`,
    end_date: `${to}-12-31`,
  };
  for (const [name, value] of Object.entries(asked)) url.searchParams.set(name, value);
  return url.href;
}

function metNorwayUrl({ latitude, longitude }: WeatherPlace): string {
  const url = new URL("https://api.met.no/weatherapi/locationforecast/2.0/complete");
  url.searchParams.set("lat", latitude.toFixed(1));
  url.searchParams.set("lon", longitude.toFixed(1));
  return url.href;
}

/**
 * The services there are. Both are free for such use and need no key. Source: Open-Meteo, terms and licence (non-commercial use,
 * under 10,000 calls a day, CC BY 4.0); MET Norway, terms of service (a User-Agent with a contact, four decimals at most, no
 * asking before Expires, If-Modified-Since; NLOD 2.0 and CC BY 4.0). Both from memory.
 */
export const SERVICES: Readonly<Record<WeatherService, ServiceTerms>> = {
  "Open-Meteo": {
    urlOf: openMeteoUrl,
    yearsUrlOf: openMeteoYearsUrl,
    wantsContact: false,
    attribution: "Weather data by Open-Meteo.com, CC BY 4.0",
  },
  "MET Norway": {
    urlOf: metNorwayUrl,
    yearsUrlOf: null,
    wantsContact: true,
    attribution: "Data from MET Norway, CC BY 4.0",
  },
};

/** Who asks, as services want it said; `contact` is how they can be reached, null where that is not said. */
export function userAgentOf(contact: string | null): string {
  return `Sowbell/0.1 ${contact ?? "(a garden's calendar)"}`;
}

/** A place as it may leave: its coordinates to the tenth of a degree. */
export function roundedPlace(place: WeatherPlace): WeatherPlace {
  // A zero below nothing would be another cell than zero.
  const tenth = (degrees: number) => Math.round(degrees * 10) / 10 + 0;
  return { ...place, latitude: tenth(place.latitude), longitude: tenth(place.longitude) };
}

/** The name of the object that asks for a place: one for every garden of a cell, a clock and a service. */
export function cellName(source: WeatherService, place: WeatherPlace): string {
  const { latitude, longitude, clock } = roundedPlace(place);
  return [source, latitude.toFixed(1), longitude.toFixed(1), clock].join("|");
}
