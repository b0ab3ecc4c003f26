import { readdirSync } from "node:fs";
import { type Call, type Command, type Exit, rejectExtraWords } from "./call.ts";
import { linksOf, sayLinks } from "./publish-folder.ts";
import { reach, serverOf } from "./server.ts";

async function run(call: Call): Promise<Exit> {
  rejectExtraWords(1, call);
  const server = serverOf(call);
  const [garden] = call.rest;
  const gardens = garden === undefined ? gardensHere() : [garden];
  return reach(call, async () => {
    let missing = false;
    for (const each of gardens) {
      const links = await linksOf({ ...server, garden: each });
      if (links) call.terminal.out(`${sayLinks(links)}\n`);
      else call.terminal.err(`sowbell: ${server.server} has no garden ${each}\n`);
      missing ||= links === null;
    }
    return missing ? 1 : 0;
  });
}

/** The gardens of the plans' folder here, by name; none where there is no such folder. */
function gardensHere(): readonly string[] {
  try {
    return readdirSync("plans", { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name)
      .sort();
  } catch {
    return [];
  }
}

/** `links [GARDEN]`: the owner's page and each person's calendar of a garden, or of every garden in plans/. */
export const LINKS: Command = { takes: ["server"], run };
