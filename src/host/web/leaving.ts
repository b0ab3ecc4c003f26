import type { FeedChoice } from "../../app/records.ts";
import type { ArchiveFiles } from "../backup/archive-files.ts";
import { deleteCopies } from "../edge/copy-nightly.ts";
import { allEvents } from "../store/events.ts";
import { type StoredGarden, zoneOf } from "../store/gardens.ts";
import { deleteGarden } from "../store/leaving.ts";
import { archive, pageResponse } from "./answers.ts";
import { formOf } from "./body.ts";
import { frameOf, type GardenRequest, withYear } from "./garden-request.ts";
import { bedsOf, gardenNameOf } from "./link-offers.ts";
import { endedPage, type LeavingPageProps, leavingPage } from "./pages/leaving.tsx";

const MOST_BYTES = 4000;

/** What the page for leaving shows where nothing was sent to it. */
export function leavingOf({ id }: Pick<StoredGarden, "id">): LeavingPageProps {
  return { file: `${id}.zip`, wrong: false, restored: false, notRestored: [] };
}

/** Whether somebody typed the garden's name, however they wrote it. */
export function isNamed(stored: StoredGarden, typed: string): boolean {
  return plainly(typed) === plainly(gardenNameOf(stored));
}

const plainly = (name: string) => name.trim().replace(/\s+/g, " ").toLowerCase();

/** The page for leaving, or the garden deleted for good where its form has the garden's name, its copies first. */
export async function answerLeaving(gardenRequest: GardenRequest): Promise<Response> {
  const { context, stored, request } = gardenRequest;
  const shown = leavingOf(stored);
  const restored = new URL(request.url).searchParams.has("restored");
  if (request.method !== "POST")
    return pageResponse(200, leavingPage(frameOf(gardenRequest), { ...shown, restored }));
  const form = await formOf(request, MOST_BYTES);
  if (!isNamed(stored, form?.get("name") ?? ""))
    return pageResponse(400, leavingPage(frameOf(gardenRequest), { ...shown, wrong: true }));
  await deleteCopies(context.copies, stored.id);
  deleteGarden(context.sql, context.now());
  return pageResponse(200, endedPage(gardenNameOf(stored)));
}

/** Everything of the garden as files in one archive, from which it can be made again; no link is in it. */
export async function answerArchive(gardenRequest: GardenRequest): Promise<Response> {
  const { archiveFiles, fileName } = await import("../backup/archive-files.ts");
  const { pack } = await import("../backup/pack.ts");
  const { context, stored } = gardenRequest;
  const files = archiveFiles(context.sql, stored, await calendars(gardenRequest, fileName));
  return archive(pack(stored.id, files, stored.changedAt), `${stored.id}.zip`);
}

/** The calendars as they would be read now, without the addresses of pages. */
async function calendars(
  gardenRequest: GardenRequest,
  fileName: (name: string) => string,
): Promise<ArchiveFiles> {
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
      garden: stored.uids,
      name: gardenNameOf(stored),
      ...{ events, choice },
      link: null,
      clock: zoneOf(stored),
      cause: stored.changedAt,
      now: context.now(),
      ledger: null,
    });
    return [`calendars/${fileName(name)}.ics`, text] as const;
  });
  return Object.fromEntries(written);
}
