import { answered, linkPath, type Request, TAKES_GZIP } from "./site.ts";

/** A poll of a person's calendar by a client that has nothing yet. */
export async function firstPoll(address: string, garden: string): Promise<Request> {
  const url = `${address}${await linkPath(garden, "helper")}sessions.ics`;
  return { url, sent: { headers: TAKES_GZIP }, status: 200 };
}

/** The same by a client that has what is stored; `warm` is a worker that may be asked for its tag. */
export async function nextPoll(address: string, garden: string, warm = address): Promise<Request> {
  const first = await firstPoll(warm, garden);
  const { etag = "" } = (await answered(first)).headers;
  const { url } = await firstPoll(address, garden);
  return { url, sent: { headers: { ...TAKES_GZIP, "if-none-match": etag } }, status: 304 };
}
