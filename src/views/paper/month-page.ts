import { type Day, sayDay, WEEKDAYS, weekdayOf } from "../../base/index.ts";
import { sayDays } from "../events/sentences.ts";
import { element, escapeXml } from "../pictures/svg.ts";
import type { SheetJob } from "./job.ts";
import type { SheetLadder } from "./ladder.ts";
import type { MonthSheet } from "./month.ts";
import { block, ruledLines, sheetHtml, textElement } from "./page.ts";
import type { SheetPerson } from "./people.ts";
import type { SheetDay, SheetWeek } from "./weeks.ts";

/** The shed's sheet of a month as one page of HTML, to print on A4 or Letter or to read on a screen. */
export function monthPage(sheet: MonthSheet): string {
  const { garden, month, person, weeks, open } = sheet;
  const title = `${garden}, ${month}${person ? `, ${person.name}` : ""}`;
  const full = weeks.filter(({ days, ladders }) => days.length + ladders.length > 0);
  return sheetHtml(
    title,
    monthHead(sheet),
    openBlock(open),
    ...(full.length === 0
      ? [emptyMonth(sheet)]
      : full.map((week) => weekBlock(week, sheet.people))),
    NOTES,
  );
}

function monthHead({ garden, month, person, people, today, facts }: MonthSheet): string {
  const whose = person ? `${garden}, for ${person.name}` : garden;
  const stood = `As it stood on ${sayDay(today, true)}; days move with the season, so print it again now and then.`;
  return block(
    "header",
    "head",
    textElement("h1", "month", month),
    element("p", { class: "of" }, escapeXml(whose), ...people.map(keyOf)),
    ...facts.map((fact) => textElement("p", "facts", fact)),
    textElement("p", "facts", stood),
  );
}

/** What somebody's letters stand for. */
function keyOf({ letters, name }: SheetPerson): string {
  const whole = letters === name ? "" : ` ${escapeXml(name)}`;
  return element(
    "span",
    { class: "whom" },
    element("span", { class: "who key" }, escapeXml(letters)),
    whole,
  );
}

function openBlock(open: readonly string[]): string {
  if (open.length === 0) return "";
  const lines = open.map((line) => block("li", "still", BOX, textElement("span", "what", line)));
  return block(
    "section",
    "open",
    textElement("h2", "name", "Still open from before"),
    block("ul", "lines", ...lines),
  );
}

function emptyMonth({ month, next }: MonthSheet): string {
  const then = next === "" ? "" : ` The next job: ${next}.`;
  return block(
    "section",
    "week",
    textElement("p", "none", `Nothing to do in the garden in ${month}.${then}`),
  );
}

const BOX = element("span", { class: "box" }, "");
const TICKED = element("span", { class: "box" }, "x");

function weekBlock({ from, to, ladders, days }: SheetWeek, people: readonly SheetPerson[]): string {
  return block(
    "section",
    "week",
    textElement("h2", "name", sayDays({ from, to })),
    ...days.flatMap((day) => day.warnings.map((warning) => warningBlock(warning, day.day))),
    ...days.flatMap((day) => dayBlock(day, people)),
    ...ladders.map((ladder) => ladderBlock(ladder, people)),
  );
}

/** `Sat 8`. */
function shortDay(day: Day): string {
  return `${(WEEKDAYS[weekdayOf(day) - 1] ?? "").slice(0, 3)} ${sayDay(day).split(" ")[0] ?? ""}`;
}

function warningBlock({ title, how }: SheetJob, day: Day): string {
  return block(
    "div",
    "warning",
    textElement("p", "what", `${title} (${shortDay(day)})`),
    ...how.map((line) => textElement("p", "how", line)),
  );
}

function dayBlock({ day, jobs }: SheetDay, people: readonly SheetPerson[]): readonly string[] {
  return jobs.map((job, i) =>
    block(
      "div",
      "job",
      element("p", { class: i === 0 ? "day" : "day again" }, escapeXml(shortDay(day))),
      job.done === "" ? BOX : TICKED,
      block("div", "told", titleLine(job, people), ...jobLines(job)),
      element(
        "div",
        { class: "write" },
        textElement("p", "till", job.done === "" ? tillNote(job) : job.done),
      ),
    ),
  );
}

const tillNote = ({ till }: SheetJob) => (till === "" ? "" : `fine till ${till}`);

function titleLine(
  { title, who, minutes, hour }: SheetJob,
  people: readonly SheetPerson[],
): string {
  const time = [hour, lengthText(minutes)].filter(Boolean).join(", ");
  return element(
    "p",
    { class: "what" },
    escapeXml(title),
    textElement("span", "time", time),
    whoMark(who, people),
  );
}

/** `20 min`, `about 1.5 hours`; empty where it takes no time of its own. */
function lengthText(minutes: number | null): string {
  if (minutes === null) return "";
  return minutes <= 60 ? `${minutes} min` : `about ${Math.ceil(minutes / 30) / 2} hours`;
}

/** The letters of who does it, in a rim; none where it is anybody's. */
function whoMark(who: readonly string[], people: readonly SheetPerson[]): string {
  const letters = people.filter(({ key }) => who.includes(key)).map((each) => each.letters);
  return textElement("span", "who", letters.join(" "));
}

function jobLines({ how, sign, caution }: SheetJob): readonly string[] {
  return [
    ...how.map((line) => textElement("p", "how", line)),
    textElement("p", "sign", sign),
    textElement("p", "caution", caution),
  ];
}

function ladderBlock({ title, how, rungs }: SheetLadder, people: readonly SheetPerson[]): string {
  const each = rungs.map(({ day, hours, who, how: own, done }) =>
    block(
      "li",
      "rung",
      done ? TICKED : BOX,
      element(
        "p",
        { class: "told" },
        element("b", {}, escapeXml(shortDay(day))),
        ` ${escapeXml(hours)}`,
        whoMark(who, people),
        ` ${escapeXml(own)}`,
      ),
    ),
  );
  return block(
    "div",
    "ladder",
    textElement("p", "what", title),
    textElement("p", "how", how),
    block("ul", "rungs", ...each),
  );
}

/** Room for what was really seen, and how to bring it back to the plan. */
const NOTES = block(
  "section",
  "notes",
  textElement("h2", "name", "Seen and done"),
  ruledLines(4),
  textElement(
    "p",
    "foot",
    "First green, first ripe, a frost and how cold, what failed, each with its day. In the plan’s diary (“24 May: carrots up”) it moves what comes after.",
  ),
);
