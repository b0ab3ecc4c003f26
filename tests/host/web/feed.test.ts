import { gunzipSync } from "node:zlib";
import { afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import { deleteGarden } from "../../../src/host/store/leaving.ts";

import {
  ask,
  DOWN,
  engine,
  inStore,
  linkTo,
  MORNING,
  PLAN,
  publish,
  type Shell,
  shellWith,
} from "./garden.ts";

const GZIP = { cf: { clientAcceptEncoding: "br, gzip" } };
const NO_ENGINE = {
  ...engine,
  build: () => expect.fail("built"),
  writeFeed: () => expect.fail("written"),
};
const LAST_MODIFIED = "Fri, 07 May 2027 06:00:00 GMT";

let shell: Shell;
let imre: string;
let feed: string;

beforeAll(async () => {
  shell = shellWith();
  imre = await linkTo("quarry-lane", "helper", "imre");
  feed = `${imre}sessions.ics`;
  expect((await publish(shell, "quarry-lane")).status).toBe(201);
});

afterEach(() => vi.restoreAllMocks());

async function etagOf(path = feed, init: RequestInit = {}): Promise<string> {
  return (await ask(shell, path, init)).headers.get("etag") ?? "";
}

/** Cuts the one stored body of a garden to so many bytes. */
const cutBody = (garden: string, length: number) =>
  inStore(garden, (sql) =>
    sql.rows("UPDATE pieces SET bytes = substr(bytes, 1, ?1) WHERE name LIKE 'body/%'", length),
  );

describe("a poll", () => {
  test("is answered with a whole calendar and every header a calendar wants", async () => {
    const answer = await ask(shell, feed);
    const text = await answer.text();
    expect(answer.status).toBe(200);
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*\r\nEND:VCALENDAR\r\n$/);
    expect(text).toContain("SUMMARY:Thin beets");
    expect(text).not.toContain("SUMMARY:Hill potatoes");
    expect(Object.fromEntries(answer.headers)).toEqual({
      "cache-control": "private, max-age=900, stale-if-error=604800",
      "content-disposition": 'inline; filename="sessions.ics"',
      "content-length": String(new TextEncoder().encode(text).length),
      "content-type": "text/calendar; charset=utf-8",
      etag: expect.stringMatching(/^"[A-Za-z0-9_-]{43}\.0"$/),
      "last-modified": LAST_MODIFIED,
      "referrer-policy": "no-referrer",
      "strict-transport-security": "max-age=31536000",
      vary: "Accept, Accept-Encoding",
      "x-content-type-options": "nosniff",
      "x-robots-tag": "noindex",
    });
  });

  test("is answered gzipped to a client that takes it, under its own tag", async () => {
    const plain = await ask(shell, feed);
    const answer = await ask(shell, feed, GZIP);
    expect(answer.headers.get("content-encoding")).toBe("gzip");
    expect(answer.headers.get("etag")).not.toBe(plain.headers.get("etag"));
    expect(answer.headers.get("vary")).toBe("Accept, Accept-Encoding");
    const bytes = new Uint8Array(await answer.arrayBuffer());
    expect(String(bytes.length)).toBe(answer.headers.get("content-length"));
    expect(gunzipSync(bytes).toString()).toBe(await plain.text());
  });

  test("is answered plainly to a client that does not say, whatever the platform's own header", async () => {
    const answer = await ask(shell, feed, { headers: { "accept-encoding": "br, gzip" }, cf: {} });
    expect(answer.headers.has("content-encoding")).toBe(false);
  });

  test("that asks for the head gets the same headers and no body", async () => {
    for (const init of [{}, GZIP]) {
      const [got, head] = [
        await ask(shell, feed, init),
        await ask(shell, feed, { method: "HEAD", ...init }),
      ];
      expect([...head.headers]).toEqual([...got.headers]);
      expect(head.status).toBe(200);
      expect(await head.text()).toBe("");
    }
  });

  test.each([
    ["the tag", (tag: string) => ({ "if-none-match": tag })],
    ["the tag made weak on the way", (tag: string) => ({ "if-none-match": `W/${tag}` })],
    ["a list with the tag", (tag: string) => ({ "if-none-match": `"a", ${tag}` })],
    ["any tag", () => ({ "if-none-match": "*" })],
    ["the date alone", () => ({ "if-modified-since": LAST_MODIFIED })],
  ])("that holds %s is told to keep it, and nothing is loaded or built", async (_, headers) => {
    const init = { headers: headers(await etagOf()) };
    const answer = await ask({ ...shell, engine: NO_ENGINE }, feed, init);
    expect(answer.status).toBe(304);
    expect(await answer.text()).toBe("");
    expect(answer.headers.get("etag")).toBe(await etagOf());
    expect(answer.headers.get("cache-control")).toContain("private");
    expect(answer.headers.get("vary")).toBe("Accept, Accept-Encoding");
    expect(answer.headers.get("last-modified")).toBe(LAST_MODIFIED);
    expect(answer.headers.has("content-type")).toBe(false);
  });

  test("with the other coding's tag, or the last epoch's, gets the whole", async () => {
    const gzipTag = await etagOf(feed, GZIP);
    const headers = { "if-none-match": gzipTag };
    expect((await ask(shell, feed, { headers, ...GZIP })).status).toBe(304);
    expect((await ask(shell, feed, { headers })).status).toBe(200);
    expect((await ask({ ...shell, epoch: "7" }, feed, { headers, ...GZIP })).status).toBe(200);
  });

  test("with another tag gets the whole, though its date fits", async () => {
    const headers = { "if-none-match": '"old"', "if-modified-since": LAST_MODIFIED };
    expect((await ask(shell, feed, { headers })).status).toBe(200);
  });

  test.each([
    ["a range", { range: "bytes=0-9" }],
    ["twenty thousand tags", { "if-none-match": '"a", '.repeat(20_000) }],
    ["a broken tag", { "if-none-match": '"' }],
    ["a date that is none", { "if-modified-since": "13 o'clock" }],
    ["an agent nobody knows", { "user-agent": "" }],
  ])("with %s gets the whole", async (_, headers: Record<string, string>) => {
    expect((await ask(shell, feed, { headers })).status).toBe(200);
  });

  test("after the epoch is raised gets the whole under a new tag", async () => {
    const headers = { "if-none-match": await etagOf() };
    const raised = { ...shell, epoch: "1" };
    const answer = await ask(raised, feed, { headers });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("etag")).not.toBe(headers["if-none-match"]);
  });

  test("never sets a cookie, asks for a password or limits a good link", async () => {
    for (let times = 0; times < 30; times += 1) {
      const answer = await ask(shell, feed);
      expect(answer.status).toBe(200);
      expect(answer.headers.has("set-cookie")).toBe(false);
      expect(answer.headers.has("www-authenticate")).toBe(false);
    }
  });
});

describe("what a link shows", () => {
  const bodyOf = async (path: string) => (await ask(shell, path)).text();

  test("its events lead to their own pages under the same link", async () => {
    const text = (await bodyOf(feed)).replaceAll("\r\n ", "");
    expect(text).toContain(`https://garden.example${imre}on/imre/2027-05-08\r\n`);
  });

  test("a reader reads no names and gets no link", async () => {
    const text = await bodyOf(`${await linkTo("quarry-lane", "reader")}tasks.ics`);
    expect(text).toContain("Anybody reads this");
    expect(text).not.toMatch(/household|imre|oda|https?:/i);
  });

  test("a quiet feed has no reminders, and the other has", async () => {
    expect(await bodyOf(feed)).toContain("BEGIN:VALARM");
    expect(await bodyOf(`${imre}quiet/sessions.ics`)).not.toContain("BEGIN:VALARM");
  });

  test("a bed's feed is called by the bed", async () => {
    const text = await bodyOf(`${imre}bed/south-bed.ics`);
    expect(text.replaceAll("\r\n ", "")).toContain("X-WR-CALNAME:Quarry Lane: South bed");
  });
});

describe("what is not there", () => {
  test("is answered alike, byte for byte, whatever is the matter with it", async () => {
    await publish(shell, "gone");
    const gone = `${await linkTo("gone", "helper", "imre")}sessions.ics`;
    expect((await ask(shell, gone)).status).toBe(200);
    await inStore("gone", (sql) => deleteGarden(sql, MORNING));
    const revoked = await linkTo("quarry-lane", "helper", "oda", 2);
    expect((await ask(shell, `${revoked}sessions.ics`)).status).toBe(200);
    const owner = await linkTo("quarry-lane", "owner");
    const close = { method: "DELETE" };
    expect((await ask(shell, `${owner}links/helper-oda-2`, close)).status).toBe(200);

    const paths = [
      `${revoked}sessions.ics`,
      revoked,
      gone,
      `/quarry-lane/helper-imre-1/${"A".repeat(43)}/sessions.ics`,
      feed.replace("helper-imre-1", "owner-1"),
      feed.replace("helper-imre-1", "helper-imre%2D1"),
      feed.replace("/quarry-lane/", "/Quarry-Lane/"),
      `${imre.slice(0, -2)}/sessions.ics`,
      `${imre}SESSIONS.ics`,
      `${imre}bed/no-such-bed.ics`,
      `${await linkTo("quarry-lane", "helper", "nobody")}sessions.ics`,
      `${await linkTo("quarry-lane", "reader")}sessions.ics`,
      "/nothing",
      "/a/b/c/d/e",
    ];
    const said = await Promise.all(
      paths.map(async (path) => {
        const answer = await ask(shell, path);
        return [answer.status, [...answer.headers], await answer.text()];
      }),
    );
    for (const answer of said) expect(answer).toEqual(said[0]);
    expect(said[0]?.[0]).toBe(404);
    const { headers } = await ask(shell, "/nothing");
    expect(headers.get("content-type")).toBe("text/plain; charset=utf-8");
  });

  test("calls no object where the link was never given out", async () => {
    const gardenOf = vi.fn(DOWN);
    const forged = `/quarry-lane/owner-1/${"A".repeat(43)}/tasks.ics`;
    expect((await ask({ ...shell, gardenOf }, forged)).status).toBe(404);
    expect(gardenOf).not.toHaveBeenCalled();
  });
});

describe("bytes that are stored", () => {
  const nextDay = MORNING + 86_400_000;

  async function fresh(garden: string) {
    await publish(shell, garden);
    const path = `${await linkTo(garden, "helper", "imre")}sessions.ics`;
    const first = await ask(shell, path);
    return { path, first, text: await first.text() };
  }

  test("answer first when the plan has changed, and the next poll has the change", async () => {
    const { path, text } = await fresh("brook");
    const later = { ...shell, now: () => MORNING + 60_000 };
    const keep = { ...later, engine: { ...engine, build: () => expect.fail("in front") } };
    vi.spyOn(console, "error").mockReturnValue();
    await publish(keep, "brook", PLAN.replace("Thin beets", "Thin carrots"), 1);
    expect(await (await ask(later, path)).text()).toBe(text);
    // The build that failed is tried again by a request after its pause.
    const soon = { ...shell, now: () => MORNING + 120_000 };
    expect(await (await ask(soon, path)).text()).toBe(text);
    const after = await ask(soon, path);
    expect(await after.text()).toContain("SUMMARY:Thin carrots");
    expect(after.headers.get("last-modified")).toBe("Fri, 07 May 2027 06:02:00 GMT");
  });

  test("are made anew once the horizon has passed", async () => {
    const { path, text } = await fresh("weir");
    const then = { ...shell, now: () => nextDay };
    expect(await (await ask(then, path)).text()).toBe(text);
    const after = await (await ask(then, path)).text();
    expect(after).toContain("DTSTART;VALUE=DATE:20270509");
    expect(after).not.toBe(text);
  });

  test("are made anew by new code, and equal bytes keep their tag and date", async () => {
    const { path, first } = await fresh("lea");
    const deployed = { ...shell, code: "code 2", now: () => MORNING + 60_000 };
    await ask(deployed, path);
    const after = await ask(deployed, path);
    expect(after.headers.get("etag")).toBe(first.headers.get("etag"));
    expect(after.headers.get("last-modified")).toBe(LAST_MODIFIED);
    expect(await inStore("lea", (sql) => sql.rows("SELECT code FROM feeds"))).toEqual([
      { code: "code 2" },
    ]);
  });

  test("say a removal by a later date, and by a second at least", async () => {
    const { path } = await fresh("mill");
    await publish(shell, "mill", PLAN.replace(/2027-05-20.*\n/, ""), 1);
    const after = await ask(shell, path);
    expect(await after.text()).not.toContain("Cover squash");
    expect(after.headers.get("last-modified")).toBe("Fri, 07 May 2027 06:00:01 GMT");
  });

  test("stay when the plan can no longer be told, and nothing logged has the link", async () => {
    const { path, text } = await fresh("ford");
    const said = vi.spyOn(console, "error").mockReturnValue();
    const build = () => {
      throw new Error("no such crop");
    };
    let now = nextDay;
    const broken = { ...shell, now: () => now, engine: { ...engine, build } };
    for (let times = 0; times < 3; times += 1)
      expect(await (await ask(broken, path)).text()).toBe(text);
    expect(said).toHaveBeenCalledTimes(1);
    now += 60_000;
    expect(await (await ask(broken, path)).text()).toBe(text);
    expect(said).toHaveBeenCalledTimes(2);
    const mac = path.split("/")[3] ?? "none";
    expect(JSON.stringify(said.mock.calls.map((call) => call.map(String)))).not.toContain(mac);
  });

  test("missing, and not to be made, are answered with 503 and when to ask again", async () => {
    vi.spyOn(console, "error").mockReturnValue();
    const writeFeed = () => expect.fail("no");
    const broken = { ...shell, engine: { ...engine, writeFeed } };
    const answer = await ask(broken, `${imre}quiet/warnings.ics`);
    expect(answer.status).toBe(503);
    expect(answer.headers.get("retry-after")).toMatch(/^\d+$/);
    expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
  });

  test.each([
    ["one that takes gzip", GZIP],
    ["one that doesn't", {}],
  ])("cut short are written anew in front of the answer to %s", async (_, init) => {
    const garden = `cut-${"cf" in init}`;
    const { path, first, text } = await fresh(garden);
    const tag = await etagOf(path, init);
    for (const length of [0, 1, 17, 18, 200, 201]) {
      await cutBody(garden, length);
      const answer = await ask(shell, path, init);
      const bytes = new Uint8Array(await answer.arrayBuffer());
      const gzip = answer.headers.get("content-encoding") === "gzip";
      expect(Buffer.from(gzip ? gunzipSync(bytes) : bytes).toString()).toBe(text);
      expect(answer.headers.get("etag")).toBe(tag);
      expect(answer.headers.get("last-modified")).toBe(first.headers.get("last-modified"));
    }
  });

  test("cut short and not to be made are nobody's answer; who holds the bytes keeps them", async () => {
    const { path } = await fresh("fold");
    const tag = await etagOf(path);
    await cutBody("fold", 99);
    vi.spyOn(console, "error").mockReturnValue();
    const broken = { ...shell, engine: { ...engine, writeFeed: () => expect.fail("no") } };
    expect((await ask(broken, path)).status).toBe(503);
    for (const held of [tag, '"another"'])
      expect((await ask(broken, path, { headers: { "if-none-match": held } })).status).toBe(304);
  });

  test("made twice at once are stored once, and both polls get what is stored", async () => {
    await publish(shell, "twin");
    const path = `${await linkTo("twin", "owner")}tasks.ics`;
    const told = [1, 2].map((at) => ({ ...shell, now: () => MORNING + at * 5000 }));
    const both = await Promise.all(told.map((one) => ask(one, path)));
    const [one, other] = await Promise.all(both.map((answer) => answer.text()));
    expect(one).toBe(other);
    const tags = new Set(both.map(({ headers }) => headers.get("last-modified")));
    expect(tags.size).toBe(1);
    const rows = await inStore("twin", (sql) => sql.rows("SELECT build FROM feeds"));
    expect(rows).toEqual([{ build: 1 }]);
  });
});

describe("with the garden's object down", () => {
  test.each([
    [{ "if-none-match": '"mine"' }, '"mine"'],
    [{ "if-none-match": 'W/"mine", "other"' }, null],
    [{ "if-modified-since": LAST_MODIFIED }, null],
  ])("who holds a copy by %j keeps it", async (headers, etag) => {
    const said = vi.spyOn(console, "error").mockReturnValue();
    const init = { headers: headers as Record<string, string> };
    const answer = await ask({ ...shell, gardenOf: DOWN }, feed, init);
    expect(answer.status).toBe(304);
    expect(answer.headers.get("etag")).toBe(etag);
    expect(said).toHaveBeenCalled();
  });

  test("who holds none is asked to come again", async () => {
    vi.spyOn(console, "error").mockReturnValue();
    const answer = await ask({ ...shell, gardenOf: DOWN }, feed);
    expect(answer.status).toBe(503);
    expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
  });
});
