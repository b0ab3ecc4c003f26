import { keyFrom, pathOf } from "../../src/host/links/mac.ts";
import type { Role } from "../../src/host/links/segment.ts";
import { type Answer, call, textOf } from "./calls.ts";
import { type Runtime, SECRET } from "./runtime.ts";

/** Crops of a bed, with enough work in them that fourteen beds have more than a hundred jobs to tap. */
const CROPS = [
  "carrot: NAME, 3 rows, under a board",
  "beet: NAME, 2 rows",
  "tomato: NAME, 6 plants, from seed indoors",
  "lettuce: NAME, 2 rows, every 14 days, 3 times",
];

/** A garden of so many beds, two people, and a helper who is no more than a number. */
export function laneText(beds: number): string {
  const bedOf = (_: unknown, bed: number) => {
    const crops = CROPS.map((crop) => `      - ${crop.replace("NAME", `sort ${bed}`)}`);
    return `  Bed ${bed}:\n    is: 24 x 4 ft\n    crops:\n${crops.join("\n")}`;
  };
  return `garden: Lane
year: 2027
place: { clock: America/Denver, last frost: about 6 May, first frost: about 2 Oct }
people:
  Person: { gardens: Wed 17-20 and Sat 8-14, home: every day }
  Other: { gardens: Sun 9-14, home: every day but Tue }
beds:
${Array.from({ length: beds }, bedOf).join("\n")}
`;
}

/** A link's address at a runtime, with its closing slash. */
export async function linkAt(
  { origin }: Pick<Runtime, "origin">,
  garden: string,
  role: Role,
): Promise<string> {
  const person = role === "helper" ? "person" : null;
  return origin + (await pathOf({ garden, role, person, serial: 1 }, await keyFrom(SECRET)));
}

/** Publishes a plan over the admin's link, over version `base` (0: as the first). */
export async function publish(
  at: Pick<Runtime, "origin">,
  garden: string,
  { text, base = 0 }: { readonly text: string; readonly base?: number },
): Promise<Answer> {
  const body = JSON.stringify({ text, file: `plans/${garden}/2027.yaml` });
  const headers: Record<string, string> =
    base === 0 ? { "if-none-match": "*" } : { "if-match": `"${base}"` };
  const address = `${await linkAt(at, garden, "admin")}plans/2027`;
  return call(address, { method: "PUT", body, headers });
}

/** Publishes as the garden's first plan, and throws where it is not taken. */
export async function mustPublish(at: Pick<Runtime, "origin">, garden: string, text: string) {
  const answer = await publish(at, garden, { text });
  if (answer.status !== 201) throw new Error(`${answer.status}: ${textOf(answer)}`);
}

/** The jobs a feed tells, by the paths of their pages: what stands behind `on/`. */
export function jobsIn(feed: string): readonly string[] {
  const lines = feed.replaceAll("\r\n ", "");
  return [...lines.matchAll(/\/on\/(2027\/[\w/-]+)\r\n/g)].map((found) => found[1] ?? "");
}
