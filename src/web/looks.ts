import { frostTonight } from "../beds/frost-tonight.ts";
import type { Season } from "../beds/lives.ts";
import { type Day, dayFromIso, isoOf, monthStart } from "../days/day.ts";
import { dayAt } from "../days/instants.ts";
import { understood } from "../diary/understand.ts";
import type { Link } from "../links/segment.ts";
import { drawPicture } from "../pictures/picture.ts";
import type { Plan } from "../plan/plan.ts";
import { temperatureFrom } from "../quantities/read.ts";
import { planOn } from "../schedule/horizon.ts";
import { monthSheet } from "../sheets/month.ts";
import { monthPage } from "../sheets/month-page.ts";
import { gardenIn } from "../store/gardens.ts";
import { nightTold } from "../words/frost-tonight.ts";
import { notFound, page, paper, picture } from "./answers.ts";
import { nameOf } from "./handing.ts";
import { type Telling, tellNow } from "./jobs.ts";
import { frostPage, picturesPage } from "./pages.tsx";

/** What the household can look at beside its jobs, by where it lies under their link. */
export const LOOKS = ["frost", "pictures", "sheet"] as const;

const PICTURES = { "frost.svg": "frost", "soil.svg": "soil", "season.svg": "season" } as const;
const SHEET = /^sheet\/(?<month>\d{4}-\d{2})$/;

/** Whether a path under a link is something to look at. */
export function isLook(rest: string): boolean {
  return LOOKS.some((look) => look === rest) || Object.hasOwn(PICTURES, rest) || SHEET.test(rest);
}

type At = { readonly telling: Telling; readonly today: Day; readonly newest: Plan };

/** Frost tonight, the year in pictures, or a month on paper, for the household; `low` is what was typed in, null where nothing was. */
export function answerLook(telling: Telling, rest: string, low: string | null): Response {
  const newest = telling.stored.plans.at(-1)?.plan;
  if (!newest) return notFound();
  const at = { telling, newest, today: dayAt(telling.shell.now(), newest.site.clock) };
  if (rest === "frost") return answerFrost(at, low);
  if (rest === "pictures") return page(200, picturesPage(backOf(telling), Object.keys(PICTURES)));
  const drawn = Object.entries(PICTURES).find(([file]) => file === rest)?.[1];
  if (drawn) {
    const season = seasonNow(telling);
    const plan = planOn(season.plans, at.today);
    return picture(drawPicture(drawn, { ...season, plan, today: at.today, form: "phone" }));
  }
  return answerSheet(at, SHEET.exec(rest)?.groups?.month ?? isoOf(at.today).slice(0, 7));
}

const backOf = ({ stored, base }: Telling) => ({ name: nameOf(stored), href: base });

function seasonNow(telling: Telling): Season {
  const { plans } = gardenIn(telling.stored);
  return { plans, placed: tellNow(telling).placed, facts: understood(plans) };
}

function answerFrost({ telling, today, newest }: At, said: string | null): Response {
  const unit = newest.measures === "us" ? "°F" : "°C";
  const low = said === null ? null : temperatureFrom(said, newest.measures);
  const told = low && nightTold(frostTonight(seasonNow(telling), today, low.si), newest.measures);
  const wrong = said !== null && low === null;
  return page(
    wrong ? 400 : 200,
    frostPage(backOf(telling), { unit, said: said ?? "", wrong, told }),
  );
}

function answerSheet({ telling, today }: At, said: string): Response {
  const month = dayFromIso(`${said}-01`);
  if (month === null) return notFound();
  const { plans } = gardenIn(telling.stored);
  const { placed, events } = tellNow(telling);
  const { person }: Pick<Link, "person"> = telling.link;
  const sheet = { plans, placed, events, month: monthStart(month), today, person };
  return paper(monthPage(monthSheet(sheet)));
}
