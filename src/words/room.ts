import { type Chance, type Fit, type Room, wantedFrom } from "../beds/room.ts";
import { sayDay } from "../days/day.ts";
import { capital } from "../practices/say.ts";
import { cm, type Measures } from "../quantities/quantity.ts";
import { sayQuantity } from "../quantities/say.ts";
import type { Section } from "./frost-tonight.ts";
import { list } from "./titles.ts";

/** A bed's room in words: what stands in it, then what may be begun, safest first; sections may be empty of lines, and then are left out. */
export function roomTold(room: Room, measures: Measures): readonly Section[] {
  const chances: readonly [Chance, string][] = [
    ["safe", "Safe"],
    ["a gamble", "A gamble"],
    ["not yet", "Not yet"],
    ["bad season", "Not at this time of year"],
    ["too late", "Too late"],
  ];
  return [
    { name: `${room.bed}, ${sayDay(room.day)}`, lines: placeTold(room, measures) },
    ...chances.map(([chance, name]) => ({ name, lines: linesOf(room, chance) })),
    { name: "For years, in a place of their own", lines: oneLine(room.forYears) },
  ].filter(({ lines }) => lines.length > 0);
}

function placeTold(room: Room, measures: Measures): readonly string[] {
  const { standing, coming, widthCm, takenCm } = room;
  const there = standing.map(({ name, day }) => `${name} till about ${sayDay(day)}`);
  const later = coming.map(({ name, day }) => `${name} about ${sayDay(day)}`);
  const free = widthCm === null ? null : Math.max(0, widthCm - takenCm);
  const till = wantedFrom(room);
  return [
    there.length > 0 ? `Here now: ${list(there)}.` : "Nothing stands here.",
    ...(later.length > 0 ? [`To come: ${list(later)}.`] : []),
    ...(free === null || there.length === 0 ? [] : [widthTold(free, measures)]),
    ...(till === null
      ? []
      : [`What you start now should be out by ${sayDay(till)}, or leave room.`]),
  ];
}

function widthTold(freeCm: number, measures: Measures): string {
  const nothing = freeCm < 10;
  return nothing
    ? "Its whole width is taken."
    : `About ${sayQuantity(cm(Math.round(freeCm / 10) * 10), measures)} of its width is free.`;
}

/** Those that are alike but for their day are one line; few enough to read at a glance. */
function linesOf({ fits }: Room, chance: Chance): readonly string[] {
  const mine = fits.filter((fit) => fit.chance === chance);
  if (chance === "too late") return oneLine([...new Set(mine.map(({ name }) => name))]);
  if (chance === "bad season") return bySpoiler(mine);
  return mine.map((fit) => `${capital(fit.name)}${WAYS[fit.start]}: ${dayTold(fit)}.`);
}

const WAYS: Readonly<Record<Fit["start"], string>> = {
  "seed indoors": " from plants",
  "winter-sown": " from plants",
  "seed outdoors": " from seed",
  plants: " from plants",
  tubers: "",
  cloves: "",
  sets: " from sets",
  crowns: "",
};

function dayTold({ from, ready }: Fit): string {
  if (from !== null) return `from about ${sayDay(from)}`;
  if (ready === null) return "not known";
  return ready.early === ready.late
    ? `ready about ${sayDay(ready.usual)}`
    : `ready about ${sayDay(ready.early)} to ${sayDay(ready.late)}`;
}

const SPOILERS: Readonly<Record<NonNullable<Fit["spoilt"]>, string>> = {
  asleep: "In soil this warm the seed would sleep",
  heat: "Heat would spoil them",
  "long days": "Long days would send them to seed",
  cold: "Cold while young would send them to seed",
  "never up": "The soil is too cold for the seed",
  "too late": "Winter comes first",
};

function bySpoiler(fits: readonly Fit[]): readonly string[] {
  const reasons = [...new Set(fits.map(({ spoilt }) => spoilt))];
  return reasons.flatMap((reason) => {
    if (reason === null) return [];
    const names = fits.filter(({ spoilt }) => spoilt === reason).map(({ name }) => name);
    return [`${SPOILERS[reason]}: ${list([...new Set(names)])}.`];
  });
}

const oneLine = (names: readonly string[]): readonly string[] =>
  names.length > 0 ? [`${capital(list(names))}.`] : [];
