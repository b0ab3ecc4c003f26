import { Agent } from "node:http";
import { keyFrom, pathOf } from "../../src/host/links/mac.ts";
import type { Role } from "../../src/host/links/segment.ts";
import { type Answer, type Call, call, textOf } from "../rough/calls.ts";
import { gardenText } from "./garden.ts";
import { SECRET } from "./start.ts";

/** The busy time that every page is asked at: the fifteenth of the next May, noon in the garden's zone. */
const BUSY = busyInstant(Date.now());

/** The season it lies in. */
export const YEAR = new Date(BUSY).getUTCFullYear();

/** How far ahead of ours the workers' clock is [ms]. Never behind, since an alarm of the past rings at once and for ever. */
export const AHEAD_MS = BUSY - Date.now();

function busyInstant(now: number): number {
  const thisYear = new Date(now).getUTCFullYear();
  const [next = 0] = [thisYear, thisYear + 1]
    .map((year) => Date.UTC(year, 4, 15, 18))
    .filter((instant) => instant > now);
  return next;
}

/** The path that a link opens, without its first slash. */
export async function linkPath(garden: string, role: Role): Promise<string> {
  const person = role === "helper" ? "imre" : null;
  const path = await pathOf({ garden, role, person, serial: 1 }, await keyFrom(SECRET));
  return path.slice(1);
}

/** Publishes a new garden of so many plantings. Throws where it is not taken. */
export async function publish(address: string, garden: string, plantings: number): Promise<void> {
  const body = JSON.stringify({
    text: gardenText({ year: YEAR, plantings }),
    file: `plans/${garden}/${YEAR}.yaml`,
  });
  const url = `${address}${await linkPath(garden, "admin")}plans/${YEAR}`;
  const sent = { method: "PUT", body, headers: { "if-none-match": "*" } };
  await answered({ url, sent, status: 201 });
}

/** What the platform says of a client that takes gzip, as the runtime takes it over this wire. */
export const TAKES_GZIP = { "mf-cf-blob": JSON.stringify({ clientAcceptEncoding: "gzip" }) };

/** A request, and the status that its answer must have. */
export type Request = { readonly url: string; readonly sent: Call; readonly status: number };

/** Its answer. Throws where that has another status. */
export async function answered({ url, sent, status }: Request): Promise<Answer> {
  const answer = await call(url, sent);
  if (answer.status === status) return answer;
  const said = textOf(answer).slice(0, 80).trim();
  throw new Error(`answered ${answer.status} instead of ${status}: ${said}`);
}

/** Connections that requests are sent over at once, so that the runtime rarely sleeps between two: waking costs it more than a poll. */
const CONNECTIONS = 8;

/** A request so many times, over connections that stay open. */
export async function repeated({ sent, ...request }: Request, times: number): Promise<void> {
  const lines = new Agent({ keepAlive: true, maxSockets: CONNECTIONS });
  let left = times;
  const oneByOne = async () => {
    while (left-- > 0) await answered({ ...request, sent: { ...sent, lines } });
  };
  try {
    await Promise.all(Array.from({ length: Math.min(CONNECTIONS, times) }, oneByOne));
  } finally {
    lines.destroy();
  }
}

/** A page or anything else that is looked at, and must be there. */
export function looking(url: string): Request {
  return { url, sent: {}, status: 200 };
}
