import { mkdirSync, mkdtempSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { publishAll, type StartOptions, secretFor, start } from "../../src/host/start.ts";
import { freePort } from "../port.ts";

const PLAN = `garden: Quarry Lane
year: 2027
place: { clock: America/Denver, last frost: about 6 May, first frost: about 2 Oct }
people: { Imre: { gardens: Sat 9-12 } }
crops:
  - carrot
`;

/** A start with everything of its own: folder, secret, state, port, and the lines it said. */
async function fresh(): Promise<{ starting: StartOptions; said: string[]; folder: string }> {
  const folder = mkdtempSync(join(tmpdir(), "sowbell-"));
  const said: string[] = [];
  const plans = join(folder, "plans");
  mkdirSync(join(plans, "quarry-lane"), { recursive: true });
  writeFileSync(join(plans, "quarry-lane", "2027.yaml"), PLAN);
  const rest = { secrets: join(folder, ".dev.vars"), state: join(folder, "state") };
  const say = (line: string) => said.push(...line.split("\n"));
  return { starting: { port: await freePort(), plans, say, ...rest }, said, folder };
}

test("a start makes its secret once, for nobody else to read, and says where", async () => {
  const { starting, said } = await fresh();
  const made = secretFor(starting.secrets, starting.say);
  expect(made).toMatch(/^[\w-]{43}$/);
  expect(secretFor(starting.secrets, starting.say)).toBe(made);
  expect(said).toHaveLength(1);
  expect(said[0]).toContain(".dev.vars");
  expect(said.join()).not.toContain(made);
  expect(statSync(starting.secrets).mode & 0o077).toBe(0);
});

test("a start keeps what else its file of secrets holds", async () => {
  const { starting } = await fresh();
  writeFileSync(starting.secrets, "EPOCH=2\n");
  secretFor(starting.secrets, starting.say);
  expect(readFileSync(starting.secrets, "utf8")).toMatch(/^EPOCH=2\nSECRET=/);
});

test("a start keeps apart what stands on a last line without an end, and tells who can read it", async () => {
  const { starting, said } = await fresh();
  writeFileSync(starting.secrets, "EPOCH=2", { mode: 0o644 });
  const secret = secretFor(starting.secrets, starting.say);
  expect(readFileSync(starting.secrets, "utf8")).toBe(`EPOCH=2\nSECRET=${secret}\n`);
  expect(secretFor(starting.secrets, starting.say)).toBe(secret);
  expect(said.filter((line) => line.includes("chmod 600"))).toHaveLength(2);
  expect(said.join()).not.toContain(secret);
});

test("a garden whose server can't be reached is told and keeps no other waiting", async () => {
  const { starting, said } = await fresh();
  mkdirSync(join(starting.plans, "brook"));
  writeFileSync(join(starting.plans, "brook", "2027.yaml"), PLAN);
  const fetch = () => Promise.reject(new Error("nobody there"));
  const secret = secretFor(starting.secrets, () => undefined);
  await publishAll(starting, { server: "http://127.0.0.1:9", secret, fetch });
  expect(said).toEqual(["brook: nobody there", "quarry-lane: nobody there"]);
});

test("a start brings gardens up with their links, past one with problems, and ends when asked", async () => {
  const { starting, said } = await fresh();
  mkdirSync(join(starting.plans, "broken"));
  writeFileSync(join(starting.plans, "broken", "2027.yaml"), "garden: [\n");
  const running = await start(starting);
  try {
    const links = said.flatMap((line) => line.match(/http:\/\/\S+/g) ?? []);
    expect(links).toHaveLength(2);
    expect(links[0]).toMatch(/\/quarry-lane\/owner-1\/[\w-]{43}\/$/);
    expect(links[1]).toMatch(/\/quarry-lane\/helper-imre-1\/[\w-]{43}\/sessions\.ics$/);
    expect(said.join("\n")).toMatch(/broken\/2027\.yaml:\d+:\d+: /);
    const feed = await fetch(links[1] ?? "");
    expect(feed.headers.get("content-encoding")).toBe("gzip");
    expect((await feed.text()).replaceAll("\r\n ", "")).toContain(`\\n\\n${running.server}`);
    const etag = feed.headers.get("etag") ?? "";
    const again = await fetch(links[1] ?? "", { headers: { "if-none-match": etag } });
    expect(again.status).toBe(304);
    expect((await fetch(links[0] ?? "")).status).toBe(200);
    await expect(start(starting)).rejects.toThrow("already");
  } finally {
    await running.stop();
  }
  await expect(fetch(`${running.server}/healthz`)).rejects.toThrow();
}, 90_000);

test("a publish whose line breaks is tried again, and its links are printed", async () => {
  const { starting, said } = await fresh();
  const links = { garden: "quarry-lane", name: "Quarry Lane", owner: "/o/", household: "/h/" };
  const asked = new Set<string>();
  const fetch = async (url: string, init?: RequestInit) => {
    const call = `${init?.method} ${url}`;
    if (!asked.has(call)) {
      asked.add(call);
      throw new TypeError("fetch failed");
    }
    if (url.endsWith("links")) return Response.json({ ...links, people: [] });
    return init?.method === "PUT"
      ? Response.json({ version: 1, doubts: [] }, { status: 201 })
      : new Response("", { status: 404 });
  };
  const secret = secretFor(starting.secrets, () => undefined);
  await publishAll(starting, { server: "http://127.0.0.1:9", secret, fetch });
  expect(said.join("\n")).not.toContain("fetch failed");
  expect(said.join("\n")).toContain("http://127.0.0.1:9/o/");
});
