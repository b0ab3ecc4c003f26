import { reviewYear } from "../../app/year-review.ts";
import { type Day, dayFromIso, isoOf, monthStart } from "../../base/days/day.ts";
import { temperatureFrom } from "../../base/quantities/read.ts";
import { frostTonight } from "../../engine/beds/frost-tonight.ts";
import { roomIn } from "../../engine/beds/room.ts";
import { planOn } from "../../engine/schedule/horizon.ts";
import type { Year } from "../../engine/year.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { frostTonightText } from "../../views/events/frost-tonight.ts";
import { roomText } from "../../views/events/room.ts";
import { monthSheet } from "../../views/paper/month.ts";
import { monthPage } from "../../views/paper/month-page.ts";
import { yearPage } from "../../views/paper/year-page.ts";
import { drawPicture } from "../../views/pictures/picture.ts";
import { gardenIn } from "../store/gardens.ts";
import { notFound, pageResponse, paper, pictureResponse } from "./answers.ts";
import { buildScheduleNow, frameOf, type GardenRequest, todayIn } from "./garden-request.ts";
import { bedsOf } from "./link-offers.ts";
import { frostPage, picturesPage, roomPage } from "./pages/reports.tsx";

type PlanToday = { readonly today: Day; readonly newest: Plan };

function planTodayOf(gardenRequest: GardenRequest): PlanToday | null {
  const newest = gardenRequest.stored.plans.at(-1)?.plan;
  return newest ? { newest, today: todayIn(gardenRequest) } : null;
}

function queryValue({ request }: GardenRequest, name: string): string | null {
  return new URL(request.url).searchParams.get(name);
}

function yearNow(gardenRequest: GardenRequest): Year {
  return buildScheduleNow(gardenRequest).year;
}

/** Farther from freezing [°C] no night is. Source: house rule, beyond the coldest night on record in any garden's reach. */
const MOST_C = 60;

/** Frost tonight, for the low that was typed in (`?low=29`); 400 where that is no temperature. */
export function answerFrost(gardenRequest: GardenRequest): Response {
  const at = planTodayOf(gardenRequest);
  if (at === null) return notFound();
  const { measures } = at.newest;
  const said = queryValue(gardenRequest, "low");
  const typed = said === null ? null : temperatureFrom(said, measures);
  const low = typed && Math.abs(typed.si) <= MOST_C ? typed : null;
  const report =
    low && frostTonightText(frostTonight(yearNow(gardenRequest), at.today, low.si), measures);
  const wrong = said !== null && low === null;
  const unit = measures === "us" ? "°F" : "°C";
  return pageResponse(
    wrong ? 400 : 200,
    frostPage(frameOf(gardenRequest), { unit, said: said ?? "", wrong, report }),
  );
}

/** What stands in a bed and what still fits in it (`?bed=south-bed`); 404 for a bed that no plan has. */
export function answerRoom(gardenRequest: GardenRequest): Response {
  const at = planTodayOf(gardenRequest);
  if (at === null) return notFound();
  const [beds, bed] = [bedsOf(gardenRequest.stored), queryValue(gardenRequest, "bed")];
  const room = bed === null ? null : roomIn(yearNow(gardenRequest), bed, at.today);
  const report = room && roomText(room, at.newest.measures);
  const missing = bed !== null && report === null;
  return pageResponse(missing ? 404 : 200, roomPage(frameOf(gardenRequest), { beds, bed, report }));
}

const PICTURES = { "frost.svg": "frost", "soil.svg": "soil", "season.svg": "season" } as const;

/** The season in pictures, one page. */
export function answerPictures(gardenRequest: GardenRequest): Response {
  return pageResponse(200, picturesPage(frameOf(gardenRequest), Object.keys(PICTURES)));
}

/** One of the pictures, by its file's name. */
export function answerPicture(gardenRequest: GardenRequest, file: string): Response {
  const at = planTodayOf(gardenRequest);
  const drawn = Object.entries(PICTURES).find(([name]) => name === file)?.[1];
  if (at === null || !drawn) return notFound();
  const year = yearNow(gardenRequest);
  const plan = planOn(year.plans, at.today);
  return pictureResponse(drawPicture(drawn, { year, plan, today: at.today, form: "phone" }));
}

/** A month on paper, `2027-06`; this month where none is said. */
export function answerSheet(gardenRequest: GardenRequest, said?: string): Response {
  const at = planTodayOf(gardenRequest);
  const month = at && dayFromIso(`${said ?? isoOf(at.today).slice(0, 7)}-01`);
  if (at === null || month === null) return notFound();
  const { plans } = gardenIn(gardenRequest.stored);
  const { scheduled, events } = buildScheduleNow(gardenRequest);
  const { person } = gardenRequest.link;
  const { today } = at;
  const sheet = { plans, scheduled: scheduled, events, month: monthStart(month), today, person };
  return paper(monthPage(monthSheet(sheet)));
}

/** A year looked back on, `2027`; the season today lies in where none is said. */
export function answerYear(gardenRequest: GardenRequest, said?: string): Response {
  const { context, stored } = gardenRequest;
  const garden = gardenIn(stored);
  const today = todayIn(gardenRequest);
  const plan =
    said === undefined
      ? planOn(garden.plans, today)
      : garden.plans.find(({ year }) => year === Number(said));
  if (!plan) return notFound();
  const report = reviewYear(garden, { plan, instant: context.now(), today });
  return paper(yearPage(report));
}
