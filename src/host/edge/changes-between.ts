import { changeText, goneText, type TaskCard } from "../../app/records.ts";
import type { MovedTask } from "../store/moved.ts";

type Cards = ReadonlyMap<string, TaskCard>;

/** What was done, moved or came new between two builds, in day order, then what fell away. */
export function changesBetween(before: Cards, now: Cards): readonly MovedTask[] {
  const changed = inDayOrder(now).flatMap((card): readonly MovedTask[] => {
    const what = changeText(before.get(card.id), card);
    return what === null
      ? []
      : [{ id: card.id, day: card.day, text: `${card.fullTitle}: ${what}` }];
  });
  const gone = inDayOrder(before)
    .filter(({ id }) => !now.has(id))
    .map(({ id, fullTitle, day }) => ({ id, day, text: `${fullTitle}: ${goneText({ day })}` }));
  return [...changed, ...gone];
}

function inDayOrder(cards: Cards): readonly TaskCard[] {
  return [...cards.values()].sort((a, b) => a.day - b.day || (a.id < b.id ? -1 : 1));
}
