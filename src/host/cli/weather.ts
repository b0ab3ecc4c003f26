import { readWeather, readYears, weatherTable } from "../../app/index.ts";
import { networkSource } from "../weather/network-source.ts";
import { roundedPlace, SERVICES } from "../weather/terms.ts";
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
  const contact = call.options.contact ?? null;
  if (SERVICES[forecast].wantsContact && contact === null)
    throw new WrongUsage(`${forecast} wants to know who asks: --contact ADDRESS`);
  const ports = { fetch, now: now(), contact, readWeather, readYears };
  const source = networkSource(forecast, ports);
  const answer = await source.seasonSoFar({ ...place, today: today(call, loaded).day }, null);
  if (answer.kind !== "good") {
    err(
      `${forecast} could not be asked: ${answer.kind === "failed" ? answer.fault : "nothing new"}.\n`,
    );
    return 1;
  }
  err(`${source.attribution}\n`);
  out(weatherTable(answer.value));
  return 0;
}

/** `weather PLAN`: the season so far and the nights ahead of the plan's place, as a table on standard output. */
export const WEATHER: Command = { takes: ["contact"], run };
