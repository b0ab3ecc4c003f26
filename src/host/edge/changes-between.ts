import type { TaskCard } from "../../app/answers.ts";
import { type Day, sayDay } from "../../base/days/day.ts";
import type { MovedTask } from "../store/moved.ts";

type Cards = ReadonlyMap<string, TaskCard>;

/** What was done, moved or came new between two builds, in day order, then what fell away. */
export function changesBetween(before: Cards, now: Cards): readonly MovedTask[] {
  const changed = inDayOrder(now).flatMap((card): readonly MovedTask[] => {
    const what = changeOf(before.get(card.id), card);
    return what === null
      ? []
      : [{ id: card.id, day: card.day, text: `${card.fullTitle}: ${what}` }];
  });
  const gone = inDayOrder(before)
    .filter(({ id }) => !now.has(id))
    .map(({ id, fullTitle, day }) => ({
      id,
      day,
      text: `${fullTitle}: no longer, was ${sayDay(day)}`,
    }));
  return [...changed, ...gone];
}

function inDayOrder(cards: Cards): readonly TaskCard[] {
  return [...cards.values()].sort((a, b) => a.day - b.day || (a.id < b.id ? -1 : 1));
}

function changeOf(was: TaskCard | undefined, is: TaskCard): string | null {
  const day = sayDay(is.day);
  if (is.done && !was?.done) return `done ${day}`;
  if (was === undefined) return `new, ${day}`;
  return was.day === is.day ? null : moveText(was.day, is.day);
}

function moveText(was: Day, is: Day): string {
  const days = Math.abs(is - was);
  const by = `${days} ${days === 1 ? "day" : "days"} ${is > was ? "later" : "sooner"}`;
  return `${sayDay(is)}, was ${sayDay(was)} (${by})`;
}
