import { roomIn } from "../beds/room.ts";
import { isoOf } from "../days/day.ts";
import { understand } from "../diary/understand.ts";
import { nearest } from "../plan/nearest.ts";
import type { Bed } from "../plan/plan.ts";
import { roomTold } from "../words/room.ts";
import {
  atMost,
  type Call,
  type Command,
  type Exit,
  type Loaded,
  load,
  tellOn,
  today,
  WrongUsage,
} from "./call.ts";

function run(call: Call): Exit {
  atMost(1, call);
  const name = call.options.bed;
  if (name === undefined) throw new WrongUsage("--bed: which bed?");
  const loaded = load(call);
  if (!loaded) return 1;
  const bed = bedCalled(name, loaded.newest.beds);
  if (bed === null) {
    call.terminal.err(`${noBed(name, loaded)}\n`);
    return 1;
  }
  const { plans } = loaded.garden;
  const told = tellOn(call, { ...loaded, garden: { ...loaded.garden, usual: {} } }, {});
  const facts = understand(
    plans.flatMap((plan) => plan.diary),
    plans,
  );
  const room = roomIn({ plans, placed: told.placed, facts }, bed, today(call, loaded).day);
  if (call.options.json) call.terminal.out(`${JSON.stringify(withDates(room), null, 2)}\n`);
  else
    call.terminal.out(
      `${roomTold(room, loaded.newest.measures)
        .map(({ name: head, lines }) => [head, ...lines.map((line) => `  ${line}`)].join("\n"))
        .join("\n\n")}\n`,
    );
  return 0;
}

const small = (text: string) => text.trim().toLowerCase();

function bedCalled(name: string, beds: readonly Bed[]): Bed | null {
  return beds.find((bed) => small(bed.name) === small(name) || bed.key === small(name)) ?? null;
}

function noBed(name: string, { newest }: Loaded): string {
  const names = newest.beds.map((bed) => bed.name);
  const near = nearest(name, names);
  if (names.length === 0) return `--bed ${name}: the plan has no beds.`;
  return `--bed ${name}: no such bed. ${near ? `Did you mean ${near}` : `There are ${names.join(", ")}`}.`;
}

/** Days as ISO dates, as a reader of JSON wants them. */
function withDates(room: ReturnType<typeof roomIn>): unknown {
  const days = new Set(["day", "early", "usual", "late", "from"]);
  return JSON.parse(
    JSON.stringify(room, (key, value) =>
      days.has(key) && typeof value === "number" ? isoOf(value as typeof room.day) : value,
    ),
  );
}

/** `room PLAN --bed NAME`: what stands in a bed on a day, and what may still be begun in it: safe, a gamble, too late. */
export const ROOM: Command = { takes: ["bed", "on", "json"], run };
