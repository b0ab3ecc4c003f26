import { existsSync, readFileSync, statSync } from "node:fs";
import { readArchive } from "../backup/read-archive.ts";
import { BadArchive } from "../backup/unpack.ts";
import { keyFrom, pathOf } from "../links/mac.ts";
import { type Call, type Command, type Exit, rejectExtraWords, WrongUsage } from "./call.ts";
import { linksOf, type Server, sayLinks } from "./publish-folder.ts";
import { reach, serverOf } from "./server.ts";

async function run(call: Call): Promise<Exit> {
  rejectExtraWords(1, call);
  const { rest, options, terminal } = call;
  const [file] = rest;
  if (file === undefined) throw new WrongUsage("which archive?");
  if (!existsSync(file) || !statSync(file).isFile())
    throw new WrongUsage(`${file}: there is no such archive`);
  const bytes = Uint8Array.from(readFileSync(file));
  const known = gardenIn(bytes);
  if (known.garden === null) {
    terminal.err(`${file}: ${known.why}.\n`);
    return 1;
  }
  const garden = options.as ?? known.garden;
  const server = serverOf(call);
  return reach(call, async () => {
    const answer = await send(server, garden, { bytes, over: options.over === true });
    if (answer.status !== 201) {
      for (const line of await whyNot(answer, garden)) terminal.err(`${file}: ${line}\n`);
      return 1;
    }
    const { years, lines } = (await answer.json()) as { years: number[]; lines: number };
    terminal.out(`${garden}: restored, ${years.join(", ")}, ${lines} lines of the diary.\n`);
    const links = await linksOf({ ...server, garden });
    if (links) terminal.out(`${sayLinks(links)}\n`);
    return 0;
  });
}

/** The garden of an archive by the id it had, or why it can't be used: seen here, before anything is sent. */
function gardenIn(bytes: Uint8Array) {
  try {
    return { garden: readArchive(bytes).snapshot.garden, why: null };
  } catch (error) {
    if (error instanceof BadArchive) return { garden: null, why: error.message };
    throw error;
  }
}

type ToSend = { readonly bytes: Uint8Array<ArrayBuffer>; readonly over: boolean };

async function send(
  { server, secret, fetch }: Server,
  garden: string,
  { bytes, over }: ToSend,
): Promise<Response> {
  const link = { garden, role: "admin", person: null, serial: 1 } as const;
  const address = new URL(`${await pathOf(link, await keyFrom(secret))}archive`, server).href;
  const headers: Record<string, string> = over ? { "If-Match": "*" } : { "If-None-Match": "*" };
  return fetch(address, { method: "PUT", headers, body: bytes });
}

async function whyNot(answer: Response, garden: string): Promise<readonly string[]> {
  if (answer.status === 412)
    return [
      `there is a garden ${garden} already. --over puts the archive in its place; --as NAME makes another.`,
    ];
  if (answer.status === 410)
    return [`${garden} was deleted for good there. --as NAME makes it under another name.`];
  const text = await answer.text();
  if (answer.status !== 422) return [`the server answered ${answer.status}: ${text.trim()}`];
  return (JSON.parse(text) as { readonly problems: readonly string[] }).problems;
}

/**
 * `restore ARCHIVE`: a garden made again from its archive on a running Sowbell, and its links. Not over one that is there, unless
 * `--over` says so; `--as NAME` gives it another id.
 */
export const RESTORE: Command = { takes: ["server", "over", "as"], run };
