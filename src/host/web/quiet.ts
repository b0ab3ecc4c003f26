import { capital, type Day, partsOf, plus, sayCount } from "../../base/index.ts";
import { eventPath } from "../links/feeds.ts";
import { eventsBetween, nextEvents } from "../store/events.ts";
import { chosenFrom, dayAhead, setOf } from "./days-ahead.ts";
import { type GardenView, todayIn } from "./garden-request.ts";
import { jobRows } from "./job-rows.ts";
import type { QuietTime } from "./pages/quiet.tsx";

/** Dates that are named of what comes next, and events that are looked through for them. Source: house rule. */
const [NAMED, LOOKED_THROUGH] = [5, 60];

/** As far ahead as orders are listed [days]: a winter. Source: house rule. */
const ORDERS_AHEAD = 150;

/** What there is to look at while the next two weeks are empty: what comes next, orders, and the years behind; how long that is, in a sentence. */
export function quietTime(view: GardenView): { readonly words: string; readonly quiet: QuietTime } {
  const { base, link, stored } = view;
  const today = todayIn(view);
  const set = setOf(view);
  const from = plus(today, 1);
  const events = nextEvents(view.context.sql, { from, set }, LOOKED_THROUGH);
  const next = chosenFrom(view, events, { set, person: link.person }).slice(0, NAMED);
  const { year } = partsOf(today);
  const reader = link.role === "reader";
  const years = reader ? [] : stored.plans.map((plan) => plan.year).filter((each) => each <= year);
  const quiet = {
    next: [...new Set(next.map(({ day }) => day))].map((day) => dayAhead(view, day, next)),
    ...(reader ? NO_ORDERS : ordersOf(view, today)),
    years: years.toReversed().map((each) => ({ year: each, href: `${base}year/${each}` })),
    picture: reader ? null : { src: `${base}season.svg`, href: `${base}pictures` },
  };
  const [first] = next;
  const words =
    first === undefined
      ? "The plan has no more jobs. Next year's plan brings new ones."
      : `Then nothing for ${sayCount(first.day - today, "day")}.`;
  return { words, quiet };
}

type Orders = Pick<QuietTime, "orders" | "amounts">;

const NO_ORDERS: Orders = { orders: [], amounts: "" };

/** What is to be ordered this winter, and what of it was; the first event that orders several things says how much. */
function ordersOf(view: GardenView, today: Day): Orders {
  const range = { from: today, before: plus(today, ORDERS_AHEAD), set: "tasks" } as const;
  const events = eventsBetween(view.context.sql, range).filter(({ tasks }) => tasks.some(isOrder));
  const ids = [...new Set(events.flatMap(({ tasks }) => tasks.filter(isOrder)))];
  const lines = jobRows(view, ids, { together: false, leads: true }).flatMap(({ job }) => {
    const [ticked, taps] = job.kind === "open" ? [false, job.taps] : [true, job.undo];
    return taps === null ? [] : [{ at: job.at, name: orderName(job.title), ticked, taps }];
  });
  const [first] = events.filter(({ tasks }) => tasks.length > 1);
  return { orders: lines, amounts: first ? `${view.base}${eventPath(first.key)}` : "" };
}

/** What is ordered, by a task's title: under the heading of orders nothing else has to be said. */
const orderName = (title: string) => capital(title.replace(/^Order (?=.)/, ""));

const isOrder = (id: string) => id.endsWith(ORDER);

/** How the id of a task ends that orders something. */
const ORDER = "/things-to-have/order";
