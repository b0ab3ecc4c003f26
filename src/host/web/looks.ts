import { type Day, dayFromIso, isoOf, monthStart } from "../../base/days/day.ts";
import { temperatureFrom } from "../../base/quantities/read.ts";
import { frostTonight } from "../../engine/beds/frost-tonight.ts";
import type { GardenSeason } from "../../engine/beds/lives.ts";
import { roomIn } from "../../engine/beds/room.ts";
import { planOn } from "../../engine/schedule/horizon.ts";
import { observationsIn } from "../../garden/diary/parse.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { frostTonightText } from "../../views/events/frost-tonight.ts";
import { roomText } from "../../views/events/room.ts";
import { monthSheet } from "../../views/paper/month.ts";
import { monthPage } from "../../views/paper/month-page.ts";
import { reviewYear } from "../../views/paper/year.ts";
import { yearPage } from "../../views/paper/year-page.ts";
import { drawPicture } from "../../views/pictures/picture.ts";
import { gardenIn } from "../store/gardens.ts";
import { notFound, page, paper, picture } from "./answers.ts";
import { bedsOf } from "./handing.ts";
import { frostPage, picturesPage, roomPage } from "./pages/looks.tsx";
import { frameOf, tellNow, todayIn, type Visit } from "./visit.ts";

type At = { readonly today: Day; readonly newest: Plan };

function atOf(visit: Visit): At | null {
  const newest = visit.stored.plans.at(-1)?.plan;
  return newest ? { newest, today: todayIn(visit) } : null;
}

function asked({ request }: Visit, name: string): string | null {
  return new URL(request.url).searchParams.get(name);
}

function seasonNow(visit: Visit): GardenSeason {
  const { plans } = gardenIn(visit.stored);
  return { plans, scheduled: tellNow(visit).scheduled, observations: observationsIn(plans) };
}

/** Farther from freezing [°C] no night is. Source: house rule, beyond the coldest night on record in any garden's reach. */
const MOST_C = 60;

/** Frost tonight, for the low that was typed in (`?low=29`); 400 where that is no temperature. */
export function answerFrost(visit: Visit): Response {
  const at = atOf(visit);
  if (at === null) return notFound();
  const { measures } = at.newest;
  const said = asked(visit, "low");
  const typed = said === null ? null : temperatureFrom(said, measures);
  const low = typed && Math.abs(typed.si) <= MOST_C ? typed : null;
  const told = low && frostTonightText(frostTonight(seasonNow(visit), at.today, low.si), measures);
  const wrong = said !== null && low === null;
  const unit = measures === "us" ? "°F" : "°C";
  return page(
    wrong ? 400 : 200,
    frostPage(frameOf(visit), { unit, said: said ?? "", wrong, told }),
  );
}

/** What stands in a bed and what still fits in it (`?bed=south-bed`); 404 for a bed that no plan has. */
export function answerRoom(visit: Visit): Response {
  const at = atOf(visit);
  if (at === null) return notFound();
  const [beds, bed] = [bedsOf(visit.stored), asked(visit, "bed")];
  const room = bed === null ? null : roomIn(seasonNow(visit), bed, at.today);
  const told = room && roomText(room, at.newest.measures);
  const missing = bed !== null && told === null;
  return page(missing ? 404 : 200, roomPage(frameOf(visit), { beds, bed, told }));
}

const PICTURES = { "frost.svg": "frost", "soil.svg": "soil", "season.svg": "season" } as const;

/** The season in pictures, one page. */
export function answerPictures(visit: Visit): Response {
  return page(200, picturesPage(frameOf(visit), Object.keys(PICTURES)));
}

/** One of the pictures, by its file's name. */
export function answerPicture(visit: Visit, file: string): Response {
  const at = atOf(visit);
  const drawn = Object.entries(PICTURES).find(([name]) => name === file)?.[1];
  if (at === null || !drawn) return notFound();
  const season = seasonNow(visit);
  const plan = planOn(season.plans, at.today);
  return picture(drawPicture(drawn, { ...season, plan, today: at.today, form: "phone" }));
}

/** A month on paper, `2027-06`; this month where none is said. */
export function answerSheet(visit: Visit, said?: string): Response {
  const at = atOf(visit);
  const month = at && dayFromIso(`${said ?? isoOf(at.today).slice(0, 7)}-01`);
  if (at === null || month === null) return notFound();
  const { plans } = gardenIn(visit.stored);
  const { scheduled: placed, events } = tellNow(visit);
  const { person } = visit.link;
  const { today } = at;
  const sheet = { plans, scheduled: placed, events, month: monthStart(month), today, person };
  return paper(monthPage(monthSheet(sheet)));
}

/** A year looked back on, `2027`; the season today lies in where none is said. */
export function answerYear(visit: Visit, said?: string): Response {
  const { shell, stored } = visit;
  const garden = gardenIn(stored);
  const today = todayIn(visit);
  const plan =
    said === undefined
      ? planOn(garden.plans, today)
      : garden.plans.find(({ year }) => year === Number(said));
  if (!plan) return notFound();
  const horizon = shell.core.horizonAt(garden, shell.now());
  const { plans } = garden;
  const report = reviewYear({ plan, plans, today }, (plans) => {
    return shell.core.tell({ ...garden, plans }, horizon, {}).scheduled;
  });
  return paper(yearPage(report));
}
