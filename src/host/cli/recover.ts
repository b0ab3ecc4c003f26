import { keyFrom, pathOf } from "../links/mac.ts";
import { type Call, type Command, type Exit, rejectExtraWords, WrongUsage } from "./call.ts";
import { reach, serverOf } from "./server.ts";

async function run(call: Call): Promise<Exit> {
  rejectExtraWords(1, call);
  const [garden] = call.rest;
  if (garden === undefined) throw new WrongUsage("which garden?");
  const { server, secret, fetch } = serverOf(call);
  const link = { garden, role: "admin", person: null, serial: 1 } as const;
  const address = new URL(`${await pathOf(link, await keyFrom(secret))}links/owner`, server).href;
  return reach(call, async () => {
    const answer = await fetch(address, { method: "DELETE" });
    if (answer.status === 404) {
      call.terminal.err(`sowbell: ${server} has no garden ${garden}\n`);
      return 1;
    }
    if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
    const { owner } = (await answer.json()) as { readonly owner: string };
    call.terminal.out(`${new URL(owner, server).href}\n`);
    call.terminal.err(
      "Every other link of an owner is closed, and the recovery phrase is void. Make another on the page of links.\n",
    );
    return 0;
  });
}

/** `recover GARDEN`: a new owner's link, made with the deployment's secret, for one who was shut out. */
export const RECOVER: Command = { takes: ["server"], run };
