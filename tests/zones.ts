import { execFileSync } from "node:child_process";
import { partOf } from "./depth.ts";

/** Zones that a process may stand in, and the hour there when 1970 began in UTC: proof that the zone is really another. */
const ZONES = [
  ["UTC", 0],
  ["America/Los_Angeles", 16],
  ["Asia/Tokyo", 9],
] as const;

/** What is run in each zone: an expression for JSON, of what `imports` name, relative to `folder`. */
export type ZoneProgram = {
  readonly folder: string;
  readonly imports: string;
  readonly gives: string;
  readonly env?: Readonly<Record<string, string>>;
};

/** What a program gives in processes of other time zones, by the zone. Throws where a zone did not take hold. */
export function inOtherZones(program: ZoneProgram): ReadonlyMap<string, unknown> {
  return new Map(
    partOf(ZONES, 1).map(([zone, hour]) => {
      const told = runIn(zone, program);
      if (told.hour !== hour) throw new Error(`${zone} did not take hold: it was ${told.hour}`);
      return [zone, told.value];
    }),
  );
}

type Told = { readonly hour: number; readonly value: unknown };

function runIn(zone: string, { folder, imports, gives, env }: ZoneProgram): Told {
  const source = `${imports}
    console.log(JSON.stringify({ hour: new Date(0).getHours(), value: ${gives} }));`;
  const node = ["--import", "tsx", "--input-type=module", "--eval", source];
  const said = execFileSync(process.execPath, node, {
    ...{ cwd: folder, encoding: "utf8" },
    env: { ...process.env, ...env, TZ: zone },
  });
  return JSON.parse(said);
}
