import { readWeather, weatherTable } from "../../app/index.ts";
import { fetchAnswer } from "../weather/fetch-answer.ts";
import { roundedPlace, SOURCES, userAgentOf } from "../weather/sources.ts";
import {
  type Call,
  type Command,
  type Exit,
  load,
  rejectExtraWords,
  today,
  WrongUsage,
} from "./call.ts";

async function run(call: Call): Promise<Exit> {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { out, err, fetch, now } = call.terminal;
  const { forecast, latitude, longitude, clock } = loaded.newest.site;
  if (forecast === null || latitude === null || longitude === null) {
    err("The plan asks nobody for the weather: write forecast: Open-Meteo under place:.\n");
    return 1;
  }
  const place = roundedPlace({ latitude, longitude, clock });
  const { urlOf, attribution, wantsContact } = SOURCES[forecast];
  const contact = call.options.contact ?? null;
  if (wantsContact && contact === null)
    throw new WrongUsage(`${forecast} wants to know who asks: --contact ADDRESS`);
  const request = { url: urlOf(place), userAgent: userAgentOf(contact), knownSince: null };
  const answer = await fetchAnswer(request, { fetch, now: now() });
  const question = { ...place, today: today(call, loaded).day };
  const { weather, fault } =
    answer.kind === "text"
      ? readWeather(forecast, answer.text, question)
      : { weather: null, fault: answer.kind === "failed" ? answer.fault : "nothing new" };
  if (weather === null) {
    err(`${forecast} could not be asked: ${fault}.\n`);
    return 1;
  }
  err(`${attribution}\n`);
  out(weatherTable(weather));
  return 0;
}

/** `weather PLAN`: the season so far and the nights ahead of the plan's place, as a table on standard output. */
export const WEATHER: Command = { takes: ["contact"], run };
