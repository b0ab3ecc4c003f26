import { strToU8, zipSync } from "fflate";
import { isoOf } from "../../base/days/day.ts";
import { dayAt } from "../../base/days/instants.ts";
import type { FeedChoice } from "../../views/calendar/choose-events.ts";
import { gardenIn, zoneOf } from "../store/gardens.ts";
import { deleteGarden } from "../store/leaving.ts";
import { allVersions } from "../store/plans.ts";
import { archive, pageResponse } from "./answers.ts";
import { formOf } from "./body.ts";
import { buildScheduleNow, frameOf, type GardenRequest } from "./garden-request.ts";
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
  await deleteGarden(context.db, stored.id, context.now());
  return pageResponse(200, endedPage(name));
}

const plainly = (name: string) => name.trim().replace(/\s+/g, " ").toLowerCase();

/** Everything of the garden as files in one archive; no link is in it. */
export async function answerArchive(gardenRequest: GardenRequest): Promise<Response> {
  const files = {
    ...(await planFiles(gardenRequest)),
    "diary.csv": diaryFile(gardenRequest),
    ...calendars(gardenRequest),
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
async function planFiles({ context, stored }: GardenRequest): Promise<Files> {
  const versions = await allVersions(context.db, stored.id);
  const files = new Map(stored.plans.map(({ year, text }) => [`${year}.yaml`, text]));
  // A name that another year has for another file, or a plan has, stands in a folder of its year.
  for (const { year, beside } of stored.plans.toReversed())
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
function diaryFile({ stored }: GardenRequest): string {
  const zone = zoneOf(stored);
  const rows = stored.lines.map(({ day, text, task, person, saidAt }) => [
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
function calendars(gardenRequest: GardenRequest): Files {
  const { context, stored } = gardenRequest;
  const { events } = buildScheduleNow(gardenRequest);
  const people = gardenIn(stored).plans.flatMap((plan) => plan.people);
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
    const { text } = context.core.writeCalendar({
      garden: stored.id,
      name: gardenNameOf(stored),
      events: context.core.choose(events, choice),
      quiet: false,
      reader: false,
      link: null,
      cause: stored.changedAt,
      ledger: null,
    });
    return [`calendars/${fileName(name)}.ics`, text] as const;
  });
  return Object.fromEntries(written);
}
