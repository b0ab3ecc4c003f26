import { gunzipSync } from "node:zlib";
import { faultsOf } from "../strict.ts";
import { type Answer, call } from "./calls.ts";

/** A poll as a calendar program sends it: whether it takes gzip, and the validator it holds, if any. */
export type Poll = {
  readonly url: string;
  readonly gzip: boolean;
  readonly held: Readonly<Record<string, string>>;
};

let polled = 0;

/** One poll over a line of its own, as if from an address of its own, or the limit for strangers would answer some. */
export function poll({ url, gzip, held }: Poll): Promise<Answer> {
  polled += 1;
  const from = { "cf-connecting-ip": `10.1.${polled >> 8}.${polled & 255}` };
  return call(url, {
    headers: { ...from, ...held, ...(gzip ? { "accept-encoding": "gzip" } : {}) },
  });
}

/** What is wrong with an answer whatever has happened to the store; `stored` says whether that feed's bytes are there. */
export function wrongIn(
  { gzip, held }: Poll,
  { status, headers, body }: Answer,
  stored: boolean,
): readonly string[] {
  const holds = Object.keys(held).length > 0;
  if (status === 200) return wrongInCalendar(gzip, headers, body);
  if (status === 304) return holds && body.length === 0 ? [] : ["a 304 to one who holds nothing"];
  if (status === 404) return [];
  if (status !== 503) return [`a status of ${status}`];
  return [
    ...(holds ? ["a 503 to one who holds a copy"] : []),
    ...(stored ? ["a 503 though it is stored"] : []),
  ];
}

function wrongInCalendar(
  gzip: boolean,
  headers: Answer["headers"],
  body: Uint8Array,
): readonly string[] {
  const packed = headers["content-encoding"] === "gzip";
  if (packed !== gzip) return ["not in the coding that was asked for"];
  if (headers["content-length"] !== String(body.length)) return ["not as long as it says"];
  const bytes = packed ? new Uint8Array(gunzipSync(body)) : body;
  const text = new TextDecoder().decode(bytes);
  const whole = text.startsWith("BEGIN:VCALENDAR\r\n") && text.endsWith("\r\nEND:VCALENDAR\r\n");
  return [...(whole ? [] : ["not whole"]), ...faultsOf(bytes).map(({ code }) => code)];
}
