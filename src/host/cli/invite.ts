import { randomBytes } from "node:crypto";
import { keyFrom, pathOf, toBase64Url } from "../links/mac.ts";
import { type Call, type Command, type Exit, rejectExtraWords } from "./call.ts";
import { serverOf } from "./server.ts";

/** Bytes of a new garden's id: never guessed, never given twice. */
const BYTES = 12;

async function run(call: Call): Promise<Exit> {
  rejectExtraWords(0, call);
  const { server, secret } = serverOf(call);
  const garden = toBase64Url(randomBytes(BYTES)).replaceAll(/[-_]/g, "0");
  const link = { garden, role: "invitation", person: null, serial: 1 } as const;
  const path = await pathOf(link, await keyFrom(secret));
  call.terminal.out(`${new URL(path, server).href}\n`);
  call.terminal.err(
    "Whoever opens it first may make one garden there. Nothing is stored of it until then.\n",
  );
  return 0;
}

/** `invite`: an address by which somebody makes one garden in the browser; made here, with the deployment's secret. */
export const INVITE: Command = { takes: ["server"], run };
