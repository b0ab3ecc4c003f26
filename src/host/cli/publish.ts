import { type Call, type Command, type Exit, rejectExtraWords, WrongUsage } from "./call.ts";
import { publishFolder, sayPublishResult } from "./publish-folder.ts";
import { reach, serverOf } from "./server.ts";

async function run(call: Call): Promise<Exit> {
  rejectExtraWords(1, call);
  const [folder] = call.rest;
  if (folder === undefined) throw new WrongUsage("which folder?");
  const server = serverOf(call);
  return reach(call, async () => {
    const done = await publishFolder({ ...server, folder });
    for (const each of done) {
      const good = each.outcome === "published" || each.outcome === "unchanged";
      (good ? call.terminal.out : call.terminal.err)(`${sayPublishResult(each)}\n`);
    }
    if (done.length === 0) call.terminal.err(`sowbell: there is no year's file in ${folder}\n`);
    const good = done.every(({ outcome }) => outcome === "published" || outcome === "unchanged");
    return done.length > 0 && good ? 0 : 1;
  });
}

/** `publish FOLDER`: a garden's files to a running Sowbell; one changed there meanwhile is left and said so, exit 1. */
export const PUBLISH: Command = { takes: ["server"], run };
