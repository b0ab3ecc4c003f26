import { createHash } from "node:crypto";
import { keyFrom, pathOf } from "../links/mac.ts";
import { type PlanFile, planFiles } from "./files.ts";

/**
 * A running Sowbell: its address (`https://garden.example`) and its secret, with which the deployment's own links are
 * made. `fetch` is the platform's, or a test's.
 */
export type Server = {
  readonly server: string;
  readonly secret: string;
  readonly fetch: (url: string, init?: RequestInit) => Promise<Response>;
};

/**
 * What became of one year's file. `published`: it is in force now, as `version`, and `lines` are its doubts.
 * `unchanged`: it already was. `left`: another version is in force that did not come from a file, or was saved
 * meanwhile; that one stays. `problems`: nothing was stored and `lines` say why, each `file:line:column: …`.
 * `failed`: the server would not have it, `lines` say how.
 */
export type PublishResult = {
  readonly file: string;
  readonly outcome: "published" | "unchanged" | "left" | "problems" | "failed";
  readonly version: number | null;
  readonly lines: readonly string[];
};

/** The addresses to hand out: the owner's page, the household's calendar and each person's own, ending in `.ics`. */
export type GardenLinks = {
  readonly garden: string;
  readonly name: string;
  readonly owner: string;
  readonly household: string;
  readonly people: readonly { readonly name: string; readonly address: string }[];
};

/**
 * Publishes every year's file (`2027.yaml`) of a garden's folder, in year order, with the other YAML files there as
 * the texts they may name, and makes the garden where there is none. A file goes in only where the version in force
 * is the one last published from a file. Throws where the server can't be reached or the folder can't be read.
 */
export async function publishFolder(
  wanted: Server & { readonly folder: string },
): Promise<readonly PublishResult[]> {
  const done: PublishResult[] = [];
  for (const file of planFiles(wanted.folder)) done.push(await publishYear(wanted, file));
  return done;
}

/** The links of a published garden; null where the server has no such garden. Throws where it can't be reached. */
export async function linksOf(
  wanted: Server & { readonly garden: string },
): Promise<GardenLinks | null> {
  const answer = await wanted.fetch(await addressOf(wanted, wanted.garden, "links"));
  if (answer.status === 404) return null;
  if (!answer.ok) throw new Error(`the server answered ${answer.status}`);
  const message = (await answer.json()) as Omit<GardenLinks, "people"> & {
    readonly people: readonly { readonly name: string; readonly path: string }[];
  };
  const at = (path: string) => new URL(path, wanted.server).href;
  const people = message.people.map(({ name, path }) => ({ name, address: at(path) }));
  return { ...message, owner: at(message.owner), household: at(message.household), people };
}

/** The links in lines to print: the owner's, then each person's calendar, or the household's where nobody is named. */
export function sayLinks({ garden, name, owner, household, people }: GardenLinks): string {
  const calendars = people.length > 0 ? people : [{ name: "Household", address: household }];
  const all = [{ name: "Owner", address: owner }, ...calendars];
  const width = Math.max(...all.map((link) => link.name.length));
  const lines = all.map((link) => `  ${link.name.padEnd(width)}  ${link.address}`);
  return [`${name} (${garden})`, ...lines].join("\n");
}

/** What became of a file, in lines to print. */
export function sayPublishResult({ file, outcome, version, lines }: PublishResult): string {
  const message = {
    published: `${file}: published as version ${version}.`,
    unchanged: `${file}: unchanged, version ${version}.`,
    left: `${file}: left alone. Version ${version} was saved elsewhere and stays in force.`,
    problems: `${file}: not published.`,
    failed: `${file}: not published.`,
  }[outcome];
  return [...lines, message].join("\n");
}

/** An address under the deployment's own link for a garden. */
async function addressOf({ server, secret }: Server, garden: string, rest: string) {
  const link = { garden, role: "admin", person: null, serial: 1 } as const;
  return new URL(`${await pathOf(link, await keyFrom(secret))}${rest}`, server).href;
}

async function publishYear(wanted: Server, plan: PlanFile): Promise<PublishResult> {
  const { garden, file, year, text, beside } = plan;
  const address = await addressOf(wanted, garden, `plans/${year}`);
  const inForce = await inForceAt(wanted, address);
  const fingerprint = createHash("sha256")
    .update(JSON.stringify([text, beside]))
    .digest("base64url");
  const version = inForce?.version ?? null;
  if (inForce?.published === fingerprint) return { file, outcome: "unchanged", version, lines: [] };
  if (inForce?.published === null) return { file, outcome: "left", version, lines: [] };
  const from: Record<string, string> =
    version === null ? { "If-None-Match": "*" } : { "If-Match": `"${version}"` };
  const body = JSON.stringify({ text, file, beside, published: fingerprint });
  return outcomeOf(file, await wanted.fetch(address, { method: "PUT", headers: from, body }));
}

type InForce = { readonly version: number; readonly published: string | null };

async function inForceAt({ fetch }: Server, address: string): Promise<InForce | null> {
  const answer = await fetch(address);
  if (answer.ok) return (await answer.json()) as InForce;
  if (answer.status === 404) return null;
  throw new Error(`the server answered ${answer.status}`);
}

async function outcomeOf(file: string, answer: Response): Promise<PublishResult> {
  const text = await answer.text();
  const failed = { file, outcome: "failed", version: null, lines: [text.trim()] } as const;
  if (!answer.headers.get("content-type")?.startsWith("application/json")) return failed;
  const message = JSON.parse(text) as {
    readonly version?: number;
    readonly doubts?: readonly string[];
    readonly problems?: readonly string[];
  };
  const version = message.version ?? null;
  if (answer.ok) return { file, outcome: "published", version, lines: message.doubts ?? [] };
  if (answer.status === 412) return { file, outcome: "left", version, lines: [] };
  if (answer.status === 422) {
    return { file, outcome: "problems", version, lines: message.problems ?? [] };
  }
  return failed;
}
