import { type Call, type Exit, WrongUsage } from "./call.ts";
import type { Server } from "./publish-folder.ts";
import { othersCanRead, secretIn } from "./secrets.ts";

/** Where a started Sowbell answers on this machine. */
const HERE = `http://127.0.0.1:${process.env.PORT ?? 8787}`;

/** The file that `npm start` keeps its secret in. */
const SECRETS = ".dev.vars";

/**
 * The server that was named, or the one on this machine, with the secret its links are made with: from the
 * environment's SECRET, else from the file that `npm start` made. Throws a wrong usage where there is none.
 */
export function serverOf({ options, terminal }: Call): Server {
  const secret = process.env.SECRET ?? secretIn(SECRETS);
  if (!secret)
    throw new WrongUsage(`no secret: set SECRET, or run npm start once, which makes ${SECRETS}`);
  const warning = process.env.SECRET === undefined ? othersCanRead(SECRETS) : null;
  if (warning !== null) terminal.err(`sowbell: ${warning}\n`);
  const server = options.server ?? HERE;
  if (!URL.canParse(server))
    throw new WrongUsage(`--server ${server}: an address like https://garden.example`);
  return { server, secret, fetch: terminal.fetch };
}

/** Does what asks the server, and tells a server that can't be reached, exit 1. */
export async function reach(
  { terminal, options }: Call,
  asking: () => Promise<Exit>,
): Promise<Exit> {
  try {
    return await asking();
  } catch (error) {
    const cause = error instanceof Error ? error.message : String(error);
    const server = options.server ?? HERE;
    const advice =
      options.server === undefined ? "; start it with npm start, or name --server" : "";
    terminal.err(`sowbell: nothing to be had from ${server}: ${cause}${advice}\n`);
    return 1;
  }
}
