import type { PictureSubject } from "../../app/index.ts";
import { type Day, dayFromIso, isoOf, monthStart, temperatureFrom } from "../../base/index.ts";
import { notFound, pageResponse, paper, pictureResponse } from "./answers.ts";
import { answerBeds, BEDS_PICTURE } from "./beds.ts";
import { forecastOf, type InShort } from "./forecast.ts";
import { weatherCellOf } from "./garden-context.ts";
import { frameOf, type GardenRequest, todayIn } from "./garden-request.ts";
import { keptCourse, keptMonth, keptPlanned, keptYear } from "./kept-year.ts";
import { bedsOf } from "./link-offers.ts";
import { withBar } from "./pages/frame.tsx";
import { frostPage, picturesPage, roomPage } from "./pages/reports.tsx";

function queryValue({ request }: GardenRequest, name: string): string | null {
  return new URL(request.url).searchParams.get(name);
}

/** Farther from freezing [°C] no night is. Source: house rule, beyond the coldest night on record in any garden's reach. */
const MOST_C = 60;

/** Frost tonight, for the low that was typed in (`?low=29`), else for the forecast's; 400 where that is no temperature. */
export async function answerFrost(gardenRequest: GardenRequest): Promise<Response> {
  const measures = gardenRequest.stored.plans.at(-1)?.summary.measures ?? "metric";
  const said = queryValue(gardenRequest, "low");
  const typed = said === null ? null : temperatureFrom(said, measures);
  const low = typed && Math.abs(typed.si) <= MOST_C ? typed : null;
  const forecast = forecastOf(gardenRequest, await inShortOf(gardenRequest));
  const lowC = said === null ? (forecast?.tonightC ?? null) : (low?.si ?? null);
  const night = lowC === null ? null : await nightAt(gardenRequest, lowC);
  const wrong = said !== null && low === null;
  const unit = measures === "us" ? "°F" : "°C";
  return pageResponse(
    wrong ? 400 : 200,
    frostPage(frameOf(gardenRequest), {
      ...{ unit, said: said ?? "", wrong },
      report: night?.report ?? null,
      beds: night?.beds ?? null,
      forecast: forecast?.shown ?? null,
    }),
  );
}

/** What a night asks something for in this garden; nothing is loaded where nobody is asked for the weather. */
async function inShortOf({ context, stored }: GardenRequest): Promise<InShort> {
  if (weatherCellOf(stored) === null) return () => "";
  const [engine, course] = [await context.engine(), await keptCourse(context)];
  return (day, lowC) => engine.frostInShort(course, day, lowC);
}

async function nightAt(gardenRequest: GardenRequest, lowC: number) {
  const { context } = gardenRequest;
  const [engine, today] = [await context.engine(), todayIn(gardenRequest)];
  const course = await keptCourse(context);
  const report = engine.frost(course, today, lowC);
  return { report, beds: engine.bedsInFrost(course, today, lowC) };
}

/** What stands in a bed and what still fits in it (`?bed=south-bed`); 404 for a bed that no plan has. */
export async function answerRoom(gardenRequest: GardenRequest): Promise<Response> {
  const [beds, bed] = [bedsOf(gardenRequest.stored), queryValue(gardenRequest, "bed")];
  const room = beds.length === 0 ? null : await roomAt(gardenRequest, bed);
  const [report, drawing] = [room?.report ?? null, room?.drawing ?? null];
  const missing = bed !== null && report === null;
  const page = roomPage(frameOf(gardenRequest), { beds, bed, report, drawing });
  return pageResponse(missing ? 404 : 200, page);
}

async function roomAt(gardenRequest: GardenRequest, bed: string | null) {
  const { context } = gardenRequest;
  const [engine, today] = [await context.engine(), todayIn(gardenRequest)];
  const course = await keptCourse(context);
  const report = bed === null ? null : engine.room(course, today, bed);
  return { report, drawing: engine.bedsWithRoom(course, today) };
}

const PICTURES: Readonly<Record<string, PictureSubject>> = {
  "frost.svg": "frost",
  "soil.svg": "soil",
  "season.svg": "season",
  "weather.svg": "weather",
};

/** The season in pictures, one page. */
export function answerPictures(gardenRequest: GardenRequest): Response {
  const asksForWeather = weatherCellOf(gardenRequest.stored) !== null;
  const files = Object.keys(PICTURES).filter((file) => file !== "weather.svg" || asksForWeather);
  const beds = bedsOf(gardenRequest.stored).length > 0 ? [BEDS_PICTURE] : [];
  return pageResponse(200, picturesPage(frameOf(gardenRequest), [...beds, ...files]));
}

/** One of the pictures, by its file's name. */
export async function answerPicture(gardenRequest: GardenRequest, file: string): Promise<Response> {
  if (file === BEDS_PICTURE) return answerBeds(gardenRequest);
  const picture = Object.hasOwn(PICTURES, file) ? PICTURES[file] : undefined;
  if (picture === undefined) return notFound();
  const { context } = gardenRequest;
  const engine = await context.engine();
  const course = await keptCourse(context);
  return pictureResponse(engine.draw(course, todayIn(gardenRequest), picture));
}

/** A month on paper, `2027-06`; this month where none is said. */
export async function answerSheet(gardenRequest: GardenRequest, said?: string): Promise<Response> {
  const month = monthAsked(said ?? isoOf(todayIn(gardenRequest)).slice(0, 7));
  if (month === null) return notFound();
  const { context, link } = gardenRequest;
  const engine = await context.engine();
  const asked = { month, person: link.person, today: todayIn(gardenRequest) };
  const sheet = engine.month(await keptMonth(context, month), asked);
  return paper(withBar(sheet, frameOf(gardenRequest)));
}

function monthAsked(said: string): Day | null {
  const day = dayFromIso(`${said}-01`);
  return day && monthStart(day);
}

/** A year looked back on, `2027`; the season today lies in where none is said. */
export async function answerYear(gardenRequest: GardenRequest, said?: string): Promise<Response> {
  const { context } = gardenRequest;
  const engine = await context.engine();
  const year = said === undefined ? null : Number(said);
  const asked = { year, today: todayIn(gardenRequest), planned: keptPlanned(context) };
  const html = engine.review(await keptYear(context), asked);
  return html === null ? notFound() : paper(withBar(html, frameOf(gardenRequest)));
}
