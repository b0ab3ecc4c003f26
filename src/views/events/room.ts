import { type Day, sayDay } from "../../base/days/day.ts";
import { cm, type Measures } from "../../base/quantities/quantity.ts";
import { sayQuantity } from "../../base/quantities/say.ts";
import type { Answer, End } from "../../engine/beds/chances.ts";
import type { Stand } from "../../engine/beds/free.ts";
import type { Room } from "../../engine/beds/room.ts";
import type { Chance } from "../../engine/beds/would-be.ts";
import type { Refusal } from "../../engine/growth/limits.ts";
import { capital, list } from "../../engine/practices/say.ts";

/** A bed's room in words: what stands there, then the crops by what they come to; empty sections are left out. */
export type RoomTold = {
  readonly head: readonly string[];
  readonly sections: readonly { readonly name: string; readonly lines: readonly string[] }[];
};

/** The same in the household's measures; a line each for what is ready in time, the rest in lists. */
export function roomTold(room: Room, measures: Measures): RoomTold {
  const of = (verdict: Answer["verdict"]) =>
    room.crops.filter((chance) => chance.verdict === verdict);
  const sections = [
    { name: "Safe, ready in time even in a cold season:", lines: readyTold(of("safe")) },
    { name: "A gamble:", lines: readyTold(of("a gamble")) },
    { name: "Not yet:", lines: openingTold(of("not yet")) },
    { name: "Too late, or nothing for this place:", lines: lateTold(of("too late")) },
    { name: "To stand for years:", lines: yearsTold(room.perennials) },
  ];
  return {
    head: headTold(room, measures),
    sections: sections.filter(({ lines }) => lines.length > 0),
  };
}

function headTold(room: Room, measures: Measures): readonly string[] {
  const { name, day, standing, coming, unknown } = room;
  const [next] = coming;
  return [
    `${name} on ${sayDay(day, true)}`,
    ...(standing.length === 0 ? ["Nothing stands in it."] : standing.map(standTold)),
    ...(standing.length === 0 ? [] : [freeTold(room, measures)]),
    ...(next ? [`From ${sayDay(next.from)} it is wanted for ${next.name}.`] : []),
    ...(unknown.length > 0 ? [`When ${list(unknown)} will stand there is not known.`] : []),
    ...room.away.map(
      ({ family, had, year }) =>
        `It had ${had} in ${year}: better nothing of the ${family} this year.`,
    ),
    ...endsTold(room.crops),
  ];
}

/** What may go on till it is gone is told by both days. */
function standTold({ name, ends, gone }: Stand): string {
  const till = ends >= gone ? sayDay(gone) : `${sayDay(ends)} to ${sayDay(gone)}`;
  return `${capital(name)} till about ${till}.`;
}

function freeTold({ freeShare, freeCm, freeFrom }: Room, measures: Measures): string {
  const all = `all of it about ${sayDay(freeFrom)}`;
  if (freeShare === null) return `Free: ${all}.`;
  if (freeShare < LEAST_FREE) return `Nothing is free before; ${all}.`;
  const part = freeCm === null ? shareTold(freeShare) : sayQuantity(cm(freeCm), measures);
  return `Free: about ${part}${freeCm === null ? "" : " across"} now, ${all}.`;
}

/** A smaller share of a bed is no room. Source: house rule, a twentieth. */
const LEAST_FREE = 0.05;

const shareTold = (share: number) =>
  share > 0.7 ? "most of it" : share > 0.4 ? "half of it" : "a corner";

const ENDS: Readonly<Record<End["by"], string>> = {
  frost: "frost takes the tender",
  "hard frost": "the hardy should be in",
  "short days": "days get too short to grow",
};

/** Each end once, by its day. */
function endsTold(chances: readonly Chance[]): readonly string[] {
  const days = new Map<End["by"], Day>();
  for (const { end } of chances) if (end && !days.has(end.by)) days.set(end.by, end.day);
  const told = [...days].sort((a, b) => a[1] - b[1]);
  const said = told.map(([by, day]) => `about ${sayDay(day)} ${ENDS[by]}`);
  return said.length === 0 ? [] : [`${capital(list(said))}.`];
}

/** A line a crop, its ways side by side; names in one column. */
function readyTold(chances: readonly Chance[]): readonly string[] {
  const width = Math.max(0, ...chances.map(({ name }) => name.length));
  return byCrop(chances).map((ways) => {
    const said = ways.map((chance) => `${chance.way}, ready ${readyDays(chance)}`);
    return `${(ways[0]?.name ?? "").padEnd(width)}  ${said.join("; ")}`;
  });
}

function byCrop(chances: readonly Chance[]): readonly (readonly Chance[])[] {
  const crops = [...new Set(chances.map(({ crop }) => crop))];
  return crops.map((key) => chances.filter(({ crop }) => crop === key));
}

/** `20 Sep to 14 Oct`; of a gamble the day in the season that still brings it. */
function readyDays({ ripe, inTime }: Chance): string {
  const { warm, usual, cold } = ripe ?? { warm: null, usual: null, cold: null };
  if (inTime === "usual" && usual !== null) return `about ${sayDay(usual)} unless it is cold`;
  if (inTime === "warm" && warm !== null) return `about ${sayDay(warm)} in a warm year only`;
  if (warm === null || cold === null) return "in time";
  return `${sayDay(warm)} to ${sayDay(cold)}`;
}

const REASONS: Readonly<Record<Refusal, string>> = {
  asleep: "its seed sleeps in soil so warm",
  heat: "heat would end it",
  "long days": "it would bolt in the long days",
  cold: "cold would make it bolt",
  "never up": "the soil is too cold",
  "too late": "it would not be ready",
};

/** `lettuce (seed, plants)`, each crop once. */
const waysTold = (chances: readonly Chance[]) =>
  byCrop(chances)
    .map((ways) => `${ways[0]?.name ?? ""} (${ways.map(({ way }) => way).join(", ")})`)
    .join(", ");

/** By the day they may go in, the soonest first, with what makes them wait where it is not spring. */
function openingTold(chances: readonly Chance[]): readonly string[] {
  const sorted = [...chances].sort((a, b) => (a.opens ?? 0) - (b.opens ?? 0));
  return grouped(sorted, ({ opens, why, inTime }) => {
    const from = `from ${sayDay(opens ?? (0 as Day))}`;
    const odds = inTime === "any" ? "" : ", a gamble even then";
    return `${from}${why === null ? "" : `, till then ${REASONS[why]}`}${odds}`;
  });
}

function lateTold(chances: readonly Chance[]): readonly string[] {
  return grouped(chances, ({ why }) => REASONS[why ?? "too late"]);
}

/** Those of one saying in one line behind it. */
function grouped(
  chances: readonly Chance[],
  saying: (chance: Chance) => string,
): readonly string[] {
  const groups = new Map<string, Chance[]>();
  for (const chance of chances) {
    const said = saying(chance);
    groups.set(said, [...(groups.get(said) ?? []), chance]);
  }
  return [...groups].map(([said, all]) => `${capital(said)}: ${waysTold(all)}`);
}

function yearsTold(chances: readonly Chance[]): readonly string[] {
  return grouped(chances, ({ verdict, opens }) =>
    verdict === "not yet" && opens !== null
      ? `from ${sayDay(opens)}`
      : verdict === "safe"
        ? "time enough to take root"
        : "next spring, to take root before the frost",
  );
}
