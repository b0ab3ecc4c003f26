import { strFromU8, unzipSync } from "fflate";
import { inject } from "vitest";
import { keyFrom, pathOf } from "../../src/host/links/mac.ts";
import type { Role } from "../../src/host/links/segment.ts";
import { readStrictly, type StrictEvent } from "../strict.ts";

/** A garden's link by its role, with its closing slash; a helper is Imre. */
export async function linkOf(garden: string, role: Role): Promise<string> {
  const { server, secret } = inject("sowbell");
  const person = role === "helper" ? "imre" : null;
  return server + (await pathOf({ garden, role, person, serial: 1 }, await keyFrom(secret)));
}

/** The events of a feed as a calendar program would read them; throws where it is no calendar without fault. */
export async function eventsAt(feed: string): Promise<readonly StrictEvent[]> {
  const answer = await fetch(feed);
  if (answer.status !== 200) throw new Error(`the feed answered ${answer.status}`);
  return readStrictly(new Uint8Array(await answer.arrayBuffer())).events;
}

/** The page of the first event in a feed whose title begins so. */
export async function jobPageOf(feed: string, title: string): Promise<string> {
  const event = (await eventsAt(feed)).find(({ summary }) => summary.startsWith(title));
  if (!event || event.link === "") throw new Error(`no event ${title} with a page`);
  return event.link;
}

/** What a garden's owner finds in the archive's diary of one job, a line each, in the order it was said. */
export async function diaryOf(garden: string, job: RegExp): Promise<readonly string[]> {
  const answer = await fetch(`${await linkOf(garden, "owner")}${garden}.zip`);
  const files = unzipSync(new Uint8Array(await answer.arrayBuffer()));
  const lines = strFromU8(files[`${garden}/diary.csv`] ?? new Uint8Array()).split("\r\n");
  return lines.filter((line) => job.test(line));
}
