import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import type { Exit } from "../../../src/host/cli/call.ts";
import { run } from "../../../src/host/cli/cli.ts";

/** A small garden with one bed, one sowing and one doubt-free line of diary. */
export const PLAN = `garden: Back Step
year: 2027
place:
  clock: Europe/Berlin
  latitude: 51
  last frost: 20 Apr, 6 May, 21 May
  first frost: about 2 Oct
  weather: { low: [-3, -3, 0, 3, 7, 11, 13, 12, 9, 5, 1, -2], high: [3, 4, 9, 14, 19, 22, 24, 24, 19, 14, 8, 4] }
measures: metric
people:
  Ada: { gardens: Sat 9-12 }
beds:
  Long bed:
    is: 4 x 1.2 m
    crops:
      - beet: 2 rows
      - tomato: 4 plants
`;

/** A folder that is gone after the test, with these files in it. */
export function folderOf(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), "sowbell-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

/** What a run of the command line gave: both outputs and the exit. */
export type Ran = { readonly exit: Exit; readonly out: string; readonly err: string };

/** A fetch that answers nothing. */
export const NO_NETWORK = async (): Promise<Response> => {
  throw new TypeError("no network in this test");
};

/** Runs the command line as of 1 March 2027. */
export async function sowbell(
  args: readonly string[],
  fetch: (url: string, init?: RequestInit) => Promise<Response> = NO_NETWORK,
): Promise<Ran> {
  let [out, err] = ["", ""];
  const exit = await run(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    now: () => Date.UTC(2027, 2, 1, 12),
    fetch,
  });
  return { exit, out, err };
}
