import {
  capital,
  cm,
  type Day,
  joinWords,
  type Measures,
  sayDay,
  sayQuantity,
} from "../../base/index.ts";
import type {
  BedOccupant,
  BedSpace,
  CropChance,
  FreeSpace,
  Refusal,
  SeasonEnd,
  StartChance,
} from "../../engine/index.ts";
import { groupsBy } from "./grouping.ts";

/** A bed's room in words: what is there, then the crops by their outcome; empty sections are left out. */
export type RoomText = {
  readonly head: readonly string[];
  readonly sections: readonly { readonly name: string; readonly lines: readonly string[] }[];
};

/** The same in the household's measures; a line each for what is ready in time, the rest in lists. */
export function roomText(room: BedSpace, measures: Measures): RoomText {
  const of = (verdict: StartChance["verdict"]) =>
    room.crops.filter((chance) => chance.verdict === verdict);
  const sections = [
    { name: "Safe, ready in time even in a cold season:", lines: readyLines(of("safe")) },
    { name: "A gamble:", lines: readyLines(of("a gamble")) },
    { name: "Not yet:", lines: openingLines(of("not yet")) },
    { name: "Too late, or nothing for this place:", lines: lateLines(of("too late")) },
    { name: "To feed the soil:", lines: soilLines(room.greenManures) },
    { name: "To stand for years:", lines: perennialLines(room.perennials) },
  ];
  return {
    head: roomHeadLines(room, measures),
    sections: sections.filter(({ lines }) => lines.length > 0),
  };
}

function roomHeadLines(room: BedSpace, measures: Measures): readonly string[] {
  const { name, day, standing, unknown } = room;
  return [
    `${name} on ${sayDay(day, true)}`,
    ...(standing.length === 0 ? ["Nothing stands in it."] : standing.map(standLine)),
    ...freeLines(room, measures),
    ...(unknown.length > 0 ? [`When ${joinWords(unknown)} will stand there is not known.`] : []),
    ...room.away.map(
      ({ family, had, year }) =>
        `It had ${had} in ${year}: better nothing of the ${family} this year.`,
    ),
    ...endLines(room.crops),
  ];
}

/** What is free in a bed, from when, and from when it is wanted; an empty bed is all free, and that is not said. */
export function freeLines(space: FreeSpace, measures: Measures): readonly string[] {
  const { standing, coming } = space;
  const [next] = coming;
  return [
    ...(standing.length === 0 ? [] : [freeLine(space, measures)]),
    ...(next ? [`From ${sayDay(next.from)} it is wanted for ${next.name}.`] : []),
  ];
}

/** Both days, for plants that go little by little. */
function standLine({ name, ends, gone }: BedOccupant): string {
  const till = ends >= gone ? sayDay(gone) : `${sayDay(ends)} to ${sayDay(gone)}`;
  return `${capital(name)} till about ${till}.`;
}

function freeLine({ freeShare, freeCm, freeFrom }: FreeSpace, measures: Measures): string {
  const all = `all of it about ${sayDay(freeFrom)}`;
  if (freeShare === null) return `Free: ${all}.`;
  if (freeShare < LEAST_FREE) return `Nothing is free before; ${all}.`;
  const part = freeCm === null ? shareText(freeShare) : sayQuantity(cm(freeCm), measures);
  return `Free: about ${part}${freeCm === null ? "" : " across"} now, ${all}.`;
}

/** The least share of a bed that counts as room. Source: house rule, a twentieth. */
const LEAST_FREE = 0.05;

const shareText = (share: number) =>
  share > 0.7 ? "most of it" : share > 0.4 ? "half of it" : "a corner";

const ENDS: Readonly<Record<SeasonEnd["by"], string>> = {
  frost: "frost takes the tender",
  "hard frost": "the hardy should be in",
  "short days": "days get too short to grow",
};

/** Each end once, by its day. */
function endLines(chances: readonly CropChance[]): readonly string[] {
  const days = new Map<SeasonEnd["by"], Day>();
  for (const { end } of chances) if (end && !days.has(end.by)) days.set(end.by, end.day);
  const endsByDay = [...days].sort((a, b) => a[1] - b[1]);
  const wording = endsByDay.map(([by, day]) => `about ${sayDay(day)} ${ENDS[by]}`);
  return wording.length === 0 ? [] : [`${capital(joinWords(wording))}.`];
}

/** A line a crop, its ways side by side; names in one column. */
function readyLines(chances: readonly CropChance[]): readonly string[] {
  const width = Math.max(0, ...chances.map(({ name }) => name.length));
  return byCrop(chances).map((ways) => {
    const wording = ways.map((chance) => `${chance.way}, ready ${readyDays(chance)}`);
    return `${(ways[0]?.name ?? "").padEnd(width)}  ${wording.join("; ")}`;
  });
}

function byCrop(chances: readonly CropChance[]): readonly (readonly CropChance[])[] {
  const crops = [...new Set(chances.map(({ crop }) => crop))];
  return crops.map((key) => chances.filter(({ crop }) => crop === key));
}

/** `20 Sep to 14 Oct`; for a gamble the day in the season that still succeeds. */
function readyDays({ ripe, inTime }: CropChance): string {
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
const waysText = (chances: readonly CropChance[]) =>
  byCrop(chances)
    .map((ways) => `${ways[0]?.name ?? ""} (${ways.map(({ way }) => way).join(", ")})`)
    .join(", ");

/** By the day they may go in, the soonest first, then by the reason to wait where it is not spring. */
function openingLines(chances: readonly CropChance[]): readonly string[] {
  const sorted = [...chances].sort((a, b) => (a.opens ?? 0) - (b.opens ?? 0));
  const waiting = sorted.filter(({ why }) => why !== null);
  const days = [
    ...groupsBy(
      sorted.filter(({ why }) => why === null),
      fromText,
    ),
  ];
  return [
    ...days.map(([from, all]) => `${capital(from)}${withGambles(all)}`),
    ...[...groupsBy(waiting, ({ why }) => REASONS[why ?? "too late"])].map(
      ([reason, all]) => `Wait, since till then ${reason}: ${waitingText(all)}`,
    ),
  ];
}

const fromText = ({ opens }: CropChance) => `from ${sayDay(opens ?? (0 as Day))}`;

/** `: turnips (seed); a gamble: cowpeas (seed)`. */
function withGambles(chances: readonly CropChance[]): string {
  const isSafe = ({ inTime }: CropChance) => inTime === "any";
  const [safe, others] = [chances.filter(isSafe), chances.filter((each) => !isSafe(each))];
  const gambles = others.length > 0 ? [`a gamble: ${waysText(others)}`] : [];
  return safe.length > 0 ? `: ${[waysText(safe), ...gambles].join("; ")}` : `, ${gambles.join("")}`;
}

/** `spinach (seed) from 8 July, celeriac (plants) from 31 May, a gamble even then`. */
function waitingText(chances: readonly CropChance[]): string {
  const wordingOf = (chance: CropChance) =>
    `${fromText(chance)}${chance.inTime === "any" ? "" : ", a gamble even then"}`;
  return [...groupsBy(chances, wordingOf)]
    .map(([wording, all]) => `${waysText(all)} ${wording}`)
    .join("; ");
}

function lateLines(chances: readonly CropChance[]): readonly string[] {
  return linesByWording(chances, ({ why }) => REASONS[why ?? "too late"]);
}

/** Those with the same text on one line after it. */
function linesByWording(
  chances: readonly CropChance[],
  wordingOf: (chance: CropChance) => string,
): readonly string[] {
  return [...groupsBy(chances, wordingOf)].map(
    ([wording, all]) => `${capital(wording)}: ${waysText(all)}`,
  );
}

function perennialLines(chances: readonly CropChance[]): readonly string[] {
  return linesByWording(chances, ({ verdict, opens }) =>
    verdict === "not yet" && opens !== null
      ? `from ${sayDay(opens)}`
      : verdict === "safe"
        ? "time enough to take root"
        : "next spring, to take root before the frost",
  );
}

/** All on one line: there are few. */
function soilLines(chances: readonly CropChance[]): readonly string[] {
  const wanted = chances.filter(({ verdict }) => verdict !== "too late");
  const groups = groupsBy(wanted, ({ verdict, opens }) =>
    verdict === "not yet" && opens !== null ? `from ${sayDay(opens)}` : "to be dug in this year",
  );
  const wording = [...groups].map(([when, all]) => `${when}: ${waysText(all)}`).join("; ");
  return wording === "" ? [] : [capital(wording)];
}
