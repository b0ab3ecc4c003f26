import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import {
  linksOf,
  publishFolder,
  sayLinks,
  sayPublishResult,
} from "../../../src/host/cli/publish-folder.ts";
import { checkLink, keyFrom } from "../../../src/host/links/mac.ts";

const SECRET = "a secret for tests, of more than 32 characters";
const SERVER = "https://garden.example";

type Stored = { version: number; text: string; published: string | null; beside: unknown };

/** A server of one garden that keeps the newest version of each year, by the rules of publishing. */
function serverWith(stored: Map<string, Stored>) {
  return async (url: string, init: RequestInit = {}): Promise<Response> => {
    const [, garden = "", segment = "", mac = "", ...rest] = new URL(url).pathname.split("/");
    const link = await checkLink({ garden, segment, mac }, await keyFrom(SECRET));
    if (link?.role !== "admin") return new Response("no", { status: 404 });
    const had = stored.get(rest[1] ?? "");
    if (init.method !== "PUT") return had ? Response.json(had) : new Response("", { status: 404 });
    const headers = new Headers(init.headers);
    const fits = had
      ? headers.get("if-match") === `"${had.version}"`
      : headers.get("if-none-match") === "*";
    if (!fits) return Response.json({ version: had?.version ?? 0 }, { status: 412 });
    const sent = JSON.parse(String(init.body));
    if (sent.text.includes("wrong")) {
      return Response.json({ problems: [`${sent.file}:1:1: wrong. right.`] }, { status: 422 });
    }
    if (sent.text.includes("long")) return new Response("too long\n", { status: 413 });
    const version = (had?.version ?? 0) + 1;
    stored.set(rest[1] ?? "", { ...sent, version });
    return Response.json({ version, doubts: sent.text.includes("doubt") ? ["a doubt"] : [] });
  };
}

let folder: string;
let stored: Map<string, Stored>;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "quarry-lane-"));
  stored = new Map();
});

const publish = () =>
  publishFolder({ folder, server: SERVER, secret: SECRET, fetch: serverWith(stored) });

async function outcomes(): Promise<string[]> {
  return (await publish()).map(({ outcome }) => outcome);
}

const write = (name: string, text: string) => writeFileSync(join(folder, name), text);

describe("publishing a folder", () => {
  test("sends each year's file in order, with the other files beside it", async () => {
    write("2027.yaml", "year: 2027");
    write("2026.yaml", "year: 2026");
    write("weather.yaml", "low: []");
    write("notes.txt", "not a plan");
    const done = await publish();
    expect(done.map(({ file }) => file)).toEqual([
      join(folder, "2026.yaml"),
      join(folder, "2027.yaml"),
    ]);
    expect(done.map(({ version }) => version)).toEqual([1, 1]);
    expect(stored.get("2027")?.beside).toEqual({ "weather.yaml": "low: []" });
  });

  test("again sends nothing, and a changed file, or one beside it, is sent", async () => {
    write("2027.yaml", "year: 2027");
    expect(await outcomes()).toEqual(["published"]);
    expect(await outcomes()).toEqual(["unchanged"]);
    write("weather.yaml", "low: []");
    expect(await outcomes()).toEqual(["published"]);
    write("2027.yaml", "year: 2027 doubt");
    expect(await publish()).toMatchObject([
      { outcome: "published", version: 3, lines: ["a doubt"] },
    ]);
  });

  test("leaves what was saved elsewhere, whatever the file says", async () => {
    write("2027.yaml", "year: 2027");
    const elsewhere = { version: 4, text: "by hand", published: null, beside: {} };
    stored.set("2027", elsewhere);
    expect(await publish()).toMatchObject([{ outcome: "left", version: 4 }]);
    expect(stored.get("2027")).toBe(elsewhere);
  });

  test("leaves what was saved between asking and sending", async () => {
    write("2027.yaml", "year: 2027");
    const server = serverWith(stored);
    const fetch = async (url: string, init: RequestInit = {}) => {
      const answer = await server(url, init);
      stored.set("2027", { version: 1, text: "by hand", published: null, beside: {} });
      return answer;
    };
    const done = await publishFolder({ folder, server: SERVER, secret: SECRET, fetch });
    expect(done).toMatchObject([{ outcome: "left", version: 1 }]);
  });

  test("goes on with the other years past problems and refusals, and tells them", async () => {
    write("2025.yaml", "wrong");
    write("2026.yaml", "long");
    write("2027.yaml", "year: 2027");
    const [wrong, long, good] = await publish();
    expect(wrong).toMatchObject({ outcome: "problems" });
    expect(wrong?.lines).toEqual([`${join(folder, "2025.yaml")}:1:1: wrong. right.`]);
    expect(long).toMatchObject({ outcome: "failed", lines: ["too long"] });
    expect(good).toMatchObject({ outcome: "published" });
  });

  test("says which server trouble kept it from asking", async () => {
    write("2027.yaml", "year: 2027");
    const fetch = async () => new Response("", { status: 503 });
    const done = publishFolder({ folder, server: SERVER, secret: SECRET, fetch });
    await expect(done).rejects.toThrow("503");
  });
});

describe("the links", () => {
  const links = { garden: "g", name: "Lane", owner: "/o/", household: "/o/household.ics" };
  const people = [{ key: "imre", name: "Imre", path: "/i/sessions.ics" }];

  test("come as whole addresses, and as null for no such garden", async () => {
    const given = { server: SERVER, secret: SECRET, garden: "g" };
    const fetch = async () => Response.json({ ...links, people });
    const said = await linksOf({ ...given, fetch });
    expect(said?.owner).toBe(`${SERVER}/o/`);
    expect(said?.people).toEqual([{ name: "Imre", address: `${SERVER}/i/sessions.ics` }]);
    const nothing = async () => new Response("", { status: 404 });
    expect(await linksOf({ ...given, fetch: nothing })).toBeNull();
    const down = async () => new Response("", { status: 503 });
    await expect(linksOf({ ...given, fetch: down })).rejects.toThrow("503");
  });

  test("are said one a line, the household's only where nobody is named", () => {
    const address = `${SERVER}/i/sessions.ics`;
    expect(sayLinks({ ...links, people: [{ name: "Imre", address }] })).toBe(
      `Lane (g)\n  Owner  /o/\n  Imre   ${address}`,
    );
    expect(sayLinks({ ...links, people: [] })).toContain("Household  /o/household.ics");
  });
});

test("what became of a file is said after its doubts or problems", () => {
  const lines = ["x.yaml:1:1: wrong. right."];
  const file = "x.yaml";
  expect(sayPublishResult({ file, outcome: "problems", version: null, lines })).toBe(
    "x.yaml:1:1: wrong. right.\nx.yaml: not published.",
  );
  expect(sayPublishResult({ file, outcome: "left", version: 3, lines: [] })).toContain(
    "stays in force",
  );
});
