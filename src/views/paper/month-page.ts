import { type Day, sayDay, WEEKDAYS, weekdayOf } from "../../base/days/day.ts";
import { sayDays } from "../events/sentences.ts";
import { element, escaped } from "../pictures/write.ts";
import type { Job } from "./job.ts";
import type { Ladder } from "./ladder.ts";
import type { MonthSheet } from "./month.ts";
import { block, page, ruled, said } from "./page.ts";
import type { SheetDay, Week } from "./weeks.ts";
import type { Who } from "./who.ts";

/** The shed's sheet of a month as one page of HTML, to print on A4 or Letter or to read on a screen. */
export function monthPage(sheet: MonthSheet): string {
  const { garden, month, person, weeks, open } = sheet;
  const title = `${garden}, ${month}${person ? `, ${person.name}` : ""}`;
  const full = weeks.filter(({ days, ladders }) => days.length + ladders.length > 0);
  return page(
    title,
    headOf(sheet),
    openBlock(open),
    ...(full.length === 0
      ? [emptyMonth(sheet)]
      : full.map((week) => weekBlock(week, sheet.people))),
    NOTES,
  );
}

function headOf({ garden, month, person, people, today, facts }: MonthSheet): string {
  const whose = person ? `${garden}, for ${person.name}` : garden;
  const stood = `As it stood on ${sayDay(today, true)}; days move with the season, so print it again now and then.`;
  return block(
    "header",
    "head",
    said("h1", "month", month),
    element("p", { class: "of" }, escaped(whose), ...people.map(keyOf)),
    ...facts.map((fact) => said("p", "facts", fact)),
    said("p", "facts", stood),
  );
}

/** What somebody's letters stand for. */
function keyOf({ letters, name }: Who): string {
  const whole = letters === name ? "" : ` ${escaped(name)}`;
  return element(
    "span",
    { class: "whom" },
    element("span", { class: "who key" }, escaped(letters)),
    whole,
  );
}

function openBlock(open: readonly string[]): string {
  if (open.length === 0) return "";
  const lines = open.map((line) => block("li", "still", BOX, said("span", "what", line)));
  return block(
    "section",
    "open",
    said("h2", "name", "Still open from before"),
    block("ul", "lines", ...lines),
  );
}

function emptyMonth({ month, next }: MonthSheet): string {
  const then = next === "" ? "" : ` The next job: ${next}.`;
  return block(
    "section",
    "week",
    said("p", "none", `Nothing to do in the garden in ${month}.${then}`),
  );
}

const BOX = element("span", { class: "box" }, "");
const TICKED = element("span", { class: "box" }, "x");

function weekBlock({ from, to, ladders, days }: Week, people: readonly Who[]): string {
  return block(
    "section",
    "week",
    said("h2", "name", sayDays({ from, to })),
    ...days.flatMap((day) => day.warnings.map((warning) => warningBlock(warning, day.day))),
    ...days.flatMap((day) => dayBlock(day, people)),
    ...ladders.map((ladder) => ladderBlock(ladder, people)),
  );
}

/** `Sat 8`. */
function shortDay(day: Day): string {
  return `${(WEEKDAYS[weekdayOf(day) - 1] ?? "").slice(0, 3)} ${sayDay(day).split(" ")[0] ?? ""}`;
}

function warningBlock({ title, how }: Job, day: Day): string {
  return block(
    "div",
    "warning",
    said("p", "what", `${title} (${shortDay(day)})`),
    ...how.map((line) => said("p", "how", line)),
  );
}

function dayBlock({ day, jobs }: SheetDay, people: readonly Who[]): readonly string[] {
  return jobs.map((job, i) =>
    block(
      "div",
      "job",
      element("p", { class: i === 0 ? "day" : "day again" }, escaped(shortDay(day))),
      job.done === "" ? BOX : TICKED,
      block("div", "told", titleLine(job, people), ...told(job)),
      element(
        "div",
        { class: "write" },
        said("p", "till", job.done === "" ? tillTold(job) : job.done),
      ),
    ),
  );
}

const tillTold = ({ till }: Job) => (till === "" ? "" : `fine till ${till}`);

function titleLine({ title, who, minutes, hour }: Job, people: readonly Who[]): string {
  const time = [hour, lengthTold(minutes)].filter(Boolean).join(", ");
  return element(
    "p",
    { class: "what" },
    escaped(title),
    said("span", "time", time),
    whoMark(who, people),
  );
}

/** `20 min`, `about 1.5 hours`; empty where it takes no time of its own. */
function lengthTold(minutes: number | null): string {
  if (minutes === null) return "";
  return minutes <= 60 ? `${minutes} min` : `about ${Math.ceil(minutes / 30) / 2} hours`;
}

/** The letters of who does it, in a rim; none where it is anybody's. */
function whoMark(who: readonly string[], people: readonly Who[]): string {
  const letters = people.filter(({ key }) => who.includes(key)).map((each) => each.letters);
  return said("span", "who", letters.join(" "));
}

function told({ how, sign, caution }: Job): readonly string[] {
  return [
    ...how.map((line) => said("p", "how", line)),
    said("p", "sign", sign),
    said("p", "caution", caution),
  ];
}

function ladderBlock({ title, how, rungs }: Ladder, people: readonly Who[]): string {
  const each = rungs.map(({ day, hours, who, how: own, done }) =>
    block(
      "li",
      "rung",
      done ? TICKED : BOX,
      element(
        "p",
        { class: "told" },
        element("b", {}, escaped(shortDay(day))),
        ` ${escaped(hours)}`,
        whoMark(who, people),
        ` ${escaped(own)}`,
      ),
    ),
  );
  return block(
    "div",
    "ladder",
    said("p", "what", title),
    said("p", "how", how),
    block("ul", "rungs", ...each),
  );
}

/** Room for what was really seen, and how to bring it back to the plan. */
const NOTES = block(
  "section",
  "notes",
  said("h2", "name", "Seen and done"),
  ruled(4),
  said(
    "p",
    "foot",
    "First green, first ripe, a frost and how cold, what failed, each with its day. In the plan’s diary (“24 May: carrots up”) it moves what comes after.",
  ),
);
