import type { Day } from "../../src/base/days/day.ts";
import type { Event } from "../../src/views/events/event.ts";

const TEXT = `Thin to one every 3 in, pulling the weakest; water first, so that the roots of those that stay are not torn.
Right when: the first true leaves are as long as your thumb nail.
Why now: up since 12 May, 9 days later than usual; the spring was cold.
Fine till Sunday 6 Jun; after that the roots stay small.
Eat the thinnings, they are good.`;

/** That many events as a big garden might have them: four of five all-day, one in five timed. */
export function season(count: number): readonly Event[] {
  return Array.from({ length: count }, (_, index) => eventOf(index));
}

function eventOf(index: number): Event {
  const timed = index % 5 === 0;
  const day = (20_580 + (index % 300)) as Day;
  const from = day * 86_400_000 + 16 * 3_600_000;
  return {
    key: `2027/beet-${index}/thin/1`,
    set: "both",
    kind: timed ? "rung" : "task",
    tasks: [`2027/beet-${index}/thin/1`],
    people: [],
    beds: ["root-bed"],
    title: `Thin beets, Root bed ${index}`,
    text: TEXT,
    readerText: TEXT,
    categories: ["thin"],
    when: timed ? { kind: "timed", from, to: from + 3_600_000 } : { kind: "all day", day },
    day,
    busy: timed,
    remindMinutesBefore: timed ? 10 : 360,
    weight: 10,
  };
}
