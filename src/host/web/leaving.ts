import type { FeedChoice } from "../../app/records.ts";
import { dayAt, isoOf } from "../../base/index.ts";
import { diaryLines } from "../store/diary.ts";
import { allEvents } from "../store/events.ts";
import { zoneOf } from "../store/gardens.ts";
import { deleteGarden } from "../store/leaving.ts";
import { allVersions, savedPlan } from "../store/plans.ts";
import { archive, pageResponse } from "./answers.ts";
import { formOf } from "./body.ts";
import { frameOf, type GardenRequest, withYear } from "./garden-request.ts";
import { bedsOf, gardenNameOf } from "./link-offers.ts";
import { endedPage, leavingPage } from "./pages/leaving.tsx";

const MOST_BYTES = 4000;

/** The page for leaving, or the garden deleted for good where its form has the garden's name. */
export async function answerLeaving(gardenRequest: GardenRequest): Promise<Response> {
  const { context, stored, request } = gardenRequest;
  const file = `${stored.id}.zip`;
  if (request.method !== "POST")
    return pageResponse(200, leavingPage(frameOf(gardenRequest), { file, wrong: false }));
  const form = await formOf(request, MOST_BYTES);
  const name = gardenNameOf(stored);
  if (plainly(form?.get("name") ?? "") !== plainly(name))
    return pageResponse(400, leavingPage(frameOf(gardenRequest), { file, wrong: true }));
  deleteGarden(context.sql, context.now());
  return pageResponse(200, endedPage(name));
}

const plainly = (name: string) => name.trim().replace(/\s+/g, " ").toLowerCase();

/** Everything of the garden as files in one archive; no link is in it. */
export async function answerArchive(gardenRequest: GardenRequest): Promise<Response> {
  const { strToU8, zipSync } = await import("fflate");
  const files = {
    ...planFiles(gardenRequest),
    "diary.csv": diaryFile(gardenRequest),
    ...(await calendars(gardenRequest)),
  };
  const bytes = Object.fromEntries(
    Object.entries(files).map(([name, text]) => [
      `${gardenRequest.stored.id}/${name}`,
      strToU8(text),
    ]),
  );
  return archive(
    zipSync(bytes, { level: 6, mtime: gardenRequest.stored.changedAt }),
    `${gardenRequest.stored.id}.zip`,
  );
}

type Files = Readonly<Record<string, string>>;

/** Each year's plan in force as the folder of a garden has it, with the files beside it; earlier versions under their number. */
function planFiles({ context: { sql }, stored }: GardenRequest): Files {
  const versions = allVersions(sql);
  const inForce = stored.plans.flatMap(({ year }) => savedPlan(sql, year) ?? []);
  const files = new Map(inForce.map(({ year, text }) => [`${year}.yaml`, text]));
  // A name that another year has for another file, or a plan has, stands in a folder of its year.
  for (const { year, beside } of inForce.toReversed())
    for (const [said, text] of Object.entries(beside)) {
      const name = fileName(said);
      const free = (files.get(name) ?? text) === text;
      files.set(free ? name : `${year}/${name}`, text);
    }
  const earlier = versions.map(({ year, version, text }) => [
    `versions/${year}-${version}.yaml`,
    text,
  ]);
  return Object.fromEntries([...files, ...earlier]);
}

/** A name that stays in its folder, wherever the archive is opened. */
function fileName(name: string): string {
  return name.replaceAll(/[^\p{L}\p{N}._ -]/gu, "_").replace(/^\.+/, "_");
}

/** What was said over links, a line each. Source of the form: RFC 4180. */
function diaryFile({ context, stored }: GardenRequest): string {
  const zone = zoneOf(stored);
  const rows = diaryLines(context.sql).map(({ day, text, task, person, saidAt }) => [
    ...[isoOf(day), person ?? "", text, task ?? ""],
    isoOf(dayAt(saidAt, zone)),
  ]);
  const all = [["day", "person", "said", "job", "written on"], ...rows];
  return all.map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

/** Quoted where it must be; what a table program would take for a formula is text. */
function cell(value: string): string {
  const text = /^[=+\-@\t]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** The calendars as they would be read now, without the addresses of pages. */
async function calendars(gardenRequest: GardenRequest): Promise<Files> {
  const { context, stored } = gardenRequest;
  await withYear(gardenRequest);
  const engine = await context.engine();
  const events = allEvents(context.sql);
  const people = stored.plans.flatMap(({ summary }) => summary.people);
  const rest = { quiet: false, reader: false };
  const all = { of: "household", bed: null, ...rest } as const;
  const choices: readonly (readonly [string, FeedChoice])[] = [
    ["household", { ...all, kind: "sessions" }],
    ["tasks", { ...all, kind: "tasks" }],
    ...people.map(
      ({ key }) => [`person-${key}`, { ...all, of: { person: key }, kind: "sessions" }] as const,
    ),
    ...bedsOf(stored).map(
      ({ key }) => [`bed-${key}`, { ...all, bed: key, kind: "tasks" }] as const,
    ),
  ];
  const written = choices.map(([name, choice]) => {
    const { text } = engine.writeFeed({
      garden: stored.id,
      name: gardenNameOf(stored),
      ...{ events, choice },
      link: null,
      cause: stored.changedAt,
      ledger: null,
    });
    return [`calendars/${fileName(name)}.ics`, text] as const;
  });
  return Object.fromEntries(written);
}
