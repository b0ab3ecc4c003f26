import { UNDO } from "../../app/records.ts";
import { type Day, dayAt, dayFromIso, dayOrThrow, isoOf, sayDay } from "../../base/index.ts";
import { buildRecord } from "../store/build.ts";
import { addWords, answersAmong, diaryLines, peopleOfLines, whyFull } from "../store/diary.ts";
import { diaryReport, type ReportedLine } from "../store/diary-report.ts";
import { type StoredGarden, zoneOf } from "../store/gardens.ts";
import type { SqlStore } from "../store/sql.ts";
import { daysOfManyLines } from "../store/taken-back.ts";
import { cardsById } from "../store/tasks.ts";
import { pageResponse, plain } from "./answers.ts";
import { formOf } from "./body.ts";
import { writeAndRebuild } from "./garden-context.ts";
import { frameOf, type GardenRequest, todayIn, withYear } from "./garden-request.ts";
import { sayPerson } from "./link-offers.ts";
import { diaryPage, type ManyLines, NEWEST } from "./pages/diary.tsx";

/** Bytes of a line and its day. */
const MOST_BYTES = 4000;

/** Letters of a line, as many as are read for what was done. */
const MOST_LETTERS = 300;

/** Lines the page shows. */
const SHOWN = 60;

/** The diary as a page, or a line of it written down by its form. */
export async function answerDiary(gardenRequest: GardenRequest): Promise<Response> {
  const { context, link, stored, request } = gardenRequest;
  await withYear(gardenRequest);
  const today = todayIn(gardenRequest);
  if (request.method !== "POST") return show(gardenRequest, today, { said: "", wrong: null });
  const form = await formOf(request, MOST_BYTES);
  const text = (form?.get("say") ?? "").replace(/\s+/g, " ").trim();
  const named = form?.get("day") ?? "";
  const day = named === "" ? today : dayFromIso(named);
  const wrong =
    whyFull(context.sql, link.person, context.now()) ??
    (day === null ? "There is no such day." : wrongIn(text, day, { today, stored }));
  if (day === null || wrong !== null)
    return show(gardenRequest, today, { said: text.slice(0, MOST_LETTERS), wrong });
  const said = { day, text, task: null, person: link.person, saidAt: context.now() };
  writeAndRebuild(context, () => addWords(context.sql, said), Boolean);
  return plain(303, "Written down.\n", { Location: `${new URL(request.url).pathname}#${NEWEST}` });
}

type LineChecking = { readonly today: Day; readonly stored: StoredGarden };

function wrongIn(text: string, day: Day, { today, stored }: LineChecking): string | null {
  const first = dayOrThrow((stored.plans[0]?.year ?? 1) - 1, 1, 1);
  if (text === "") return "Nothing was said.";
  if (text.length > MOST_LETTERS) return "Say it in fewer words: a line has 300 letters.";
  if (day < first) return "That day lies before this garden's first plan.";
  return day > today ? "That day is still to come." : null;
}

function show(
  gardenRequest: GardenRequest,
  today: Day,
  { said, wrong }: { readonly said: string; readonly wrong: string | null },
): Response {
  const { context, stored } = gardenRequest;
  const reported = withTitles(context.sql, linesShown(context.sql));
  const people = peopleOfLines(
    context.sql,
    reported.flatMap(({ line }) => line ?? []),
  );
  const newest = Math.max(...reported.map(({ line }) => line ?? 0));
  const lines = reported.map(({ line, day, text, understood }) => {
    // Of a line in a plan it is not known who wrote it.
    const by = line === null ? null : sayPerson(stored, people.get(line) ?? null);
    return { day: sayDay(day, true), by, text, understood, isNewest: line === newest };
  });
  const measures = stored.plans.at(-1)?.summary.measures ?? "metric";
  const shown = {
    measures,
    today: isoOf(today),
    said,
    wrong,
    lines,
    many: manyLines(gardenRequest),
  };
  return pageResponse(wrong === null ? 200 : 400, diaryPage(frameOf(gardenRequest), shown));
}

/** What one person said in great number within a day, which the owner alone can take back in one go. */
function manyLines({ context, link, stored }: GardenRequest): readonly ManyLines[] {
  if (link.role !== "owner") return [];
  return daysOfManyLines(context.sql).map(
    ({ person, first, last, count, saidAt, isTakenBack }) => ({
      person: person ?? "",
      name: sayPerson(stored, person),
      lines: `${first}-${last}`,
      count,
      day: sayDay(dayAt(saidAt, zoneOf(stored)), true),
      isTakenBack,
    }),
  );
}

/** The diary as the last build understood it, and what was said since, the newest line first. */
function linesShown(sql: SqlStore): readonly ReportedLine[] {
  const since = diaryLines(sql, buildRecord(sql).line).map(({ id, day, text, task }) => {
    return { line: id, day, text: task === null ? text : "", understood: [] };
  });
  return [...diaryReport(sql), ...since]
    .toSorted((a, b) => b.day - a.day || (b.line ?? 0) - (a.line ?? 0))
    .slice(0, SHOWN);
}

/** Lines with the job's title for each answer, and what was answered; what is remarked of it stays. */
function withTitles(sql: SqlStore, lines: readonly ReportedLine[]): readonly ReportedLine[] {
  const numbers = lines.flatMap(({ line }) => line ?? []);
  const answers = new Map(answersAmong(sql, numbers).map((answer) => [answer.id, answer]));
  const tasks = [...answers.values()].flatMap(({ task }) => task ?? []);
  const titles = new Map(cardsById(sql, tasks).map((card) => [card.id, card.fullTitle]));
  return lines.map((line) => {
    const answer = answers.get(line.line ?? 0);
    const title = titles.get(answer?.task ?? "");
    if (answer === undefined || title === undefined) return line;
    const remarks = line.understood.flatMap((each) => each.split("; ").slice(1));
    return {
      ...line,
      text: title,
      understood: [[answerWords(answer.text), ...remarks].join("; ")],
    };
  });
}

const answerWords = (said: string) =>
  said.startsWith(UNDO) ? `taken back: ${said.slice(UNDO.length)}` : said;
