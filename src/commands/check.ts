import { atMost, type Call, type Command, type Exit, load } from "./call.ts";

function run(call: Call): Exit {
  atMost(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  for (const { file, plantings, beds, filled } of loaded.asked) {
    const count = (many: number, one: string) => `${many} ${one}${many === 1 ? "" : "s"}`;
    call.terminal.out(
      `${file}: ${count(plantings.length, "planting")} in ${count(beds.length, "bed")}, no problem.\n`,
    );
    if (filled.length > 0) call.terminal.out("Where the plan says nothing:\n");
    for (const { what, value, why } of filled) call.terminal.out(`  ${what}: ${value} (${why})\n`);
  }
  return 0;
}

/** `check PLAN`: problems and doubts by line, and every default that was filled in. */
export const CHECK: Command = { takes: [], run };
