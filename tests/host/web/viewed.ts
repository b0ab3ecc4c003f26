import type { Day } from "../../../src/base/days/day.ts";
import { startOf } from "../../../src/base/days/instants.ts";
import type { Link } from "../../../src/host/links/segment.ts";
import type { StoredGarden } from "../../../src/host/store/gardens.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import type { GardenContext } from "../../../src/host/web/garden-context.ts";
import type { GardenView } from "../../../src/host/web/garden-request.ts";
import type { Event } from "../../../src/views/events/event.ts";

const CLOCK = "America/Denver";

/** An event all day, for everybody, with one task; what is given stands instead. */
export function eventOn(day: Day, over: Partial<Event> = {}): Event {
  return {
    ...{ key: "2027/beet/thin/1", set: "both", kind: "task", tasks: ["2027/beet/thin/1"] },
    ...{ people: [], beds: [], title: "Thin beets, Root bed", categories: [] },
    ...{ text: "For the household.", readerText: "For anybody." },
    ...{ day, when: { kind: "all day", day }, busy: false, remindMinutesBefore: 360, weight: 10 },
    ...over,
  };
}

/** A garden of Imre's and Oda's at noon of a day, as an owner sees it; what is given of the link stands instead. */
export function viewOf(
  today: Day,
  link: Partial<Link> = {},
  sql: SqlStore | null = null,
): GardenView {
  const people = [
    { key: "imre", name: "Imre" },
    { key: "oda", name: "Oda" },
  ];
  const plans = [{ year: 2027, summary: { clock: CLOCK, people, beds: [] } }];
  const now = () => startOf(today, CLOCK) + 12 * 3_600_000;
  return {
    context: { sql, now } as unknown as GardenContext,
    stored: { id: "g", plans } as unknown as StoredGarden,
    link: { garden: "g", role: "owner", person: null, serial: 1, ...link },
    base: "/g/l/m/",
  };
}
