import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { call, textOf } from "./calls.ts";
import { jobsIn, laneText, linkAt, mustPublish } from "./lane.ts";
import { type Reply, send, written } from "./line.ts";
import { poll, wrongIn } from "./polls.ts";
import { bundled, freshFolder, type Runtime, SECRET, startOurs } from "./runtime.ts";

const FORM = "application/x-www-form-urlencoded";
const MIB = 1024 * 1024;

const folder = freshFolder();
let running: Runtime;
let host: string;
/** The helper's link, the admin's, the owner's and a reader's, each as a path with its closing slash. */
let [path, admin, owner, reader] = ["", "", "", ""];
let job = "";

beforeAll(async () => {
  const script = bundled(`${folder.path}/bundle`);
  running = await startOurs({ script, state: `${folder.path}/state` });
  host = new URL(running.origin).host;
  await mustPublish(running, "lane", laneText(2));
  const pathOf = async (role: "helper" | "admin" | "owner" | "reader") =>
    new URL(await linkAt(running, "lane", role)).pathname;
  [path, admin] = [await pathOf("helper"), await pathOf("admin")];
  [owner, reader] = [await pathOf("owner"), await pathOf("reader")];
  const feed = await call(`${running.origin}${path}tasks.ics`);
  job = `${path}on/${jobsIn(textOf(feed))[0]}`;
});

afterAll(async () => {
  await running?.stop();
  folder.remove();
});

afterEach(async () => {
  const good = { url: `${running.origin}${path}tasks.ics`, gzip: true, held: {} };
  const answer = await poll(good);
  expect([answer.status, wrongIn(good, answer, true)]).toEqual([200, []]);
});

/** What no answer may hold: the secret, links of others, where anything lies, and what a failure looks like inside. */
function leaksIn({ text }: Reply): readonly string[] {
  const others = [admin, owner, reader].map((link) => link.split("/")[3] ?? "none");
  const inside = [
    SECRET,
    folder.path,
    "node_modules",
    "/src/",
    "deployed.js",
    "SQLITE",
    "D1_ERROR",
  ];
  const stacks = /\n\s+at \S+ ?\(/.test(text) ? ["a stack"] : [];
  return [...[...others, ...inside].filter((word) => text.includes(word)), ...stacks];
}

/** Whether it was our code that answered: everything of ours forbids guessing types. */
function isOurs({ text }: Reply): boolean {
  return /\r\nx-content-type-options: nosniff\r\n/i.test(text);
}

async function replyTo(bytes: string, how: { readonly hangUp?: boolean } = {}): Promise<Reply> {
  const reply = await send(running.origin, bytes, how);
  expect(leaksIn(reply)).toEqual([]);
  return reply;
}

/** The answer of our own code. */
async function ours(bytes: string): Promise<number | null> {
  const reply = await replyTo(bytes);
  expect(isOurs(reply), reply.text.slice(0, 500)).toBe(true);
  expect(reply.status).toBeLessThan(500);
  return reply.status;
}

/** Each request as if from another address, or the limit for strangers would answer most of them. */
let strangers = 0;
const from = () => {
  strangers += 1;
  return { Host: host, "CF-Connecting-IP": `10.0.${strangers >> 8}.${strangers & 255}` };
};

const get = (at: string, headers: Record<string, string> = {}) =>
  written(`GET ${at} HTTP/1.1`, { ...from(), ...headers });

const post = (at: string, body: string, headers: Record<string, string> = {}) =>
  written(`POST ${at} HTTP/1.1`, { ...from(), "Content-Type": FORM, ...headers }, body);

const diaryLength = async () =>
  (await running.ask("lane", ["SELECT count(*) AS lines FROM diary"]))[0]?.[0]?.lines;

describe("requests that no browser sends", () => {
  test.each([
    ["of HTTP/1.0", () => written(`GET ${path}tasks.ics HTTP/1.0`, { Host: host }), 200],
    [
      "with a header of 64 KB",
      () => get(`${path}tasks.ics`, { "X-Long": "a".repeat(65_536) }),
      200,
    ],
    [
      "with 64 KB of tags",
      () => get(`${path}tasks.ics`, { "If-None-Match": '"a", '.repeat(13_000) }),
      200,
    ],
    ["for a path of 64 KB", () => get(`/${"a".repeat(65_536)}`), 404],
    ["for another host, in the clear", () => get("/", { Host: "other.example" }), null],
  ])("%s are answered", async (_, bytes, status) => {
    if (status !== null) expect(await ours(bytes())).toBe(status);
    else expect((await replyTo(bytes())).status).toBe(308);
  });

  // The runtime answers these itself, before any code of ours; what it says is its own.
  test.each([
    ["without a host", () => written(`GET ${path}tasks.ics HTTP/1.1`), 400],
    ["of HTTP/1.0 without a host", () => written(`GET ${path}tasks.ics HTTP/1.0`), 400],
    ["with a host that is none", () => get("/", { Host: "a b" }), 500],
    ["with a header of 200 KB", () => get("/", { "X-Long": "a".repeat(200_000) }), 431],
    ["with a method nobody knows", () => written("NONSENSE / HTTP/1.1", { Host: host }), 501],
    ["to connect", () => written(`CONNECT ${path} HTTP/1.1`, { Host: host }), 500],
    ["for a whole address", () => get(`http://other.example${path}tasks.ics`), 500],
    ["for no path", () => get(""), 400],
    ["with a header name that is none", () => get("/", { "Bad Name": "1" }), 400],
    ["that are no request", () => "\x16\x03\x01\x02\x00\x01\x00\r\n\r\n", 501],
  ])("%s are refused by the runtime itself", async (_, bytes, status) => {
    const reply = await replyTo(bytes());
    expect([reply.status, isOurs(reply)]).toEqual([status, false]);
    expect(reply.text.split("\r\n\r\n")[1]?.length).toBeLessThan(60);
  });

  test("that end in the midst are no trouble, and nothing is written down", async () => {
    const before = await diaryLength();
    const whole = post(job, new URLSearchParams({ task: "a", say: "done" }).toString());
    for (const part of [4, 40, whole.length - 12, whole.length - 1])
      await replyTo(whole.slice(0, part), { hangUp: true });
    expect(await diaryLength()).toBe(before);
  });

  test("with a second one hidden in the body are two or one, and none is another's", async () => {
    const head = `POST ${job} HTTP/1.1\r\nHost: ${host}\r\nContent-Length: 5\r\nTransfer-Encoding: chunked`;
    const hidden = `GET ${path} HTTP/1.1\r\nHost: ${host}\r\n\r\n`;
    const reply = await replyTo(`${head}\r\n\r\n0\r\n\r\n${hidden}`);
    expect(reply.status).toBe(400);
  });

  test.each(["PROPFIND", "TRACE", "DELETE", "PUT", "PATCH", "OPTIONS", "POST"])(
    "by the method %s are not allowed, whether the link is good or not",
    async (method) => {
      const forged = `/lane/helper-person-1/${"A".repeat(43)}/`;
      for (const at of [`${path}tasks.ics`, path, `${forged}tasks.ics`, "/", "/healthz"])
        expect(await ours(written(`${method} ${at} HTTP/1.1`, { Host: host }))).toBe(405);
    },
  );
});

describe("paths", () => {
  test.each([
    ["/../", 200],
    ["/%2e%2e/", 200],
    ["//", 404],
    ["/%2f", 404],
    ["/%00", 404],
    ["/%c0%ae%c0%ae/", 404],
    ["/.dev.vars", 404],
    ["/wrangler.toml", 404],
    ["LINK../tasks.ics", 404],
    ["LINK%2e%2e/tasks.ics", 404],
    ["LINK/tasks.ics", 404],
    ["/LINKtasks.ics", 404],
    ["LINKtasks.ics%00", 404],
    ["LINKtasks%2eics", 404],
    ["LINKtasks.ics/", 404],
    ["LINKbed%2Fbed-1.ics", 404],
    ["LINKon/%", 404],
    ["LINKon/%00", 404],
    ["LINKon/../../..", 404],
    ["LINKon//", 404],
    ["LINKplans/2027", 404],
    ["LINKlinks", 404],
    // Dots are resolved as every client resolves them, so these are the very same path.
    ["LINK./tasks.ics", 200],
    ["LINKx/../tasks.ics", 200],
    ["LINKtasks.ics?x=%", 200],
  ])("%s is answered with %i", async (at, status) => {
    expect(await ours(get(at.replace("LINK", path)))).toBe(status);
  });
});

describe("links that were never given out", () => {
  const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

  function reSpelt(mac: string): readonly string[] {
    const endings = [...LETTERS].map((letter) => mac.slice(0, -1) + letter);
    const coded = [...mac].map(
      (letter, i) => `${mac.slice(0, i)}%${hex(letter)}${mac.slice(i + 1)}`,
    );
    const cut = [1, 2, 20, 42].map((length) => mac.slice(0, length));
    const more = ["=", "A", "%00", "."].map((end) => mac + end);
    const other = [mac.toUpperCase(), mac.toLowerCase(), "A".repeat(43), "_".repeat(43)];
    const base64 = mac.replaceAll("-", "+").replaceAll("_", "/");
    return [...endings, ...coded, ...cut, ...more, ...other, base64].filter((one) => one !== mac);
  }

  const hex = (letter: string) => letter.charCodeAt(0).toString(16);

  test("forged, cut and re-spelt in every way are one and the same nothing", async () => {
    const [, garden, segment, mac = ""] = path.split("/");
    const replies = new Set<string>();
    for (const one of reSpelt(mac)) {
      const reply = await replyTo(get(`/${garden}/${segment}/${one}/tasks.ics`));
      expect([reply.status, isOurs(reply)], one).toEqual([404, true]);
      replies.add(reply.text);
    }
    expect(replies.size).toBe(1);
  });

  test("who knocks on and on is told to wait at the most, and keeps no good link waiting", async () => {
    const knock = written(`GET /lane/owner-1/${"A".repeat(43)}/ HTTP/1.1`, { Host: host });
    const statuses = new Set<number | null>();
    for (let times = 0; times < 80; times += 1) statuses.add((await replyTo(knock)).status);
    expect([404, 429]).toEqual(expect.arrayContaining([...statuses]));
  });

  test.each([
    "owner-1",
    "helper-other-1",
    "helper-person-2",
    "helper-person-01",
    "reader-1",
    "admin-1",
  ])("a good one is good for nobody else: %s", async (segment) => {
    const at = path.replace("helper-person-1", segment);
    for (const rest of ["tasks.ics", "", "plans/2027", "links"])
      expect(await ours(get(at + rest))).toBe(404);
  });
});

describe("taps", () => {
  const said = (say: string) => new URLSearchParams({ task: "2027/beet/thin/1", say }).toString();

  test.each([
    ["of no type", { "Content-Type": "" }, said("done"), 400],
    ["of plain text", { "Content-Type": "text/plain" }, said("done"), 400],
    ["of JSON", { "Content-Type": "application/json" }, '{"task":"a","say":"done"}', 400],
    ["in parts", { "Content-Type": "multipart/form-data; boundary=a" }, said("done"), 400],
    ["of 1 MB", {}, said("done") + "a".repeat(MIB), 400],
    ["that say something else", {}, said("DROP TABLE diary"), 400],
    ["that say nothing", {}, "", 400],
    ["from another site", { "Sec-Fetch-Site": "cross-site" }, said("done"), 403],
    ["from another origin", { Origin: "https://other.example" }, said("done"), 403],
  ])("%s are refused, and nothing is written down", async (_, headers, body, status) => {
    const before = await diaryLength();
    expect(await ours(post(job, body, headers as Record<string, string>))).toBe(status);
    expect(await diaryLength()).toBe(before);
  });

  test("over a reader's link are nothing", async () => {
    const at = job.replace(path, reader);
    const reply = await send(running.origin, post(at, said("done")));
    expect([reply.status, await diaryLength()]).toEqual([404, 0]);
  });
});

describe("plans", () => {
  const put = (text: string, headers: Record<string, string> = { "If-Match": '"1"' }) => {
    const body = JSON.stringify({ text, file: "plans/lane/2027.yaml" });
    return written(`PUT ${admin}plans/2027 HTTP/1.1`, { Host: host, ...headers }, body);
  };

  const lines = (levels: number) =>
    Array.from({ length: levels }, (_, level) => {
      const inner = level === 0 ? "carrot" : `*a${level - 1}`;
      return `x${level}: &a${level} [${Array.from({ length: 9 }, () => inner).join(", ")}]`;
    });

  test.each([
    ["of 1 MB", () => "a".repeat(MIB), 413],
    ["of 300 KB", () => "a".repeat(300 * 1024), 413],
    ["of aliases of aliases", () => `${laneText(1)}${lines(9).join("\n")}\n`, 422],
    ["of aliases where crops belong", () => `${lines(9).join("\n")}\ncrops: *a8\n`, 422],
    ["that holds itself", () => `${laneText(1)}notes: &a [*a]\n`, 422],
    ["of ten thousand brackets", () => "[".repeat(10_000), 422],
    ["of nothing", () => "", 422],
    ["of tags", () => "!!js/function 'function () {}'", 422],
    ["of its own prototype", () => `${laneText(1)}__proto__: { polluted: yes }\n`, 422],
  ])("%s are refused in time, and the one in force stays", async (_, text, status) => {
    const begun = Date.now();
    expect(await ours(put(text()))).toBe(status);
    expect(Date.now() - begun).toBeLessThan(3000);
  });

  test("without a condition, over another version, or that are no JSON are refused", async () => {
    expect(await ours(put(laneText(1), {}))).toBe(428);
    expect(await ours(put(laneText(1), { "If-Match": '"7"' }))).toBe(412);
    const headers = { Host: host, "If-Match": '"1"' };
    const first = `PUT ${admin}plans/2027 HTTP/1.1`;
    for (const body of ["{", "[]", "null", '{"text":1}'])
      expect(await ours(written(first, headers, body))).toBe(400);
  });
});

/** A script of ours, by its file; it has nothing in it. */
const OWN_SCRIPT = /<script src="\/[a-z]+\.js"(?: data-base="[^"<>]*")? defer=""><\/script>/g;

describe("names that would be more than names", () => {
  const EVIL = "<script>alert(1)</script>";
  const TEXT = `garden: "${EVIL} Lane\\r\\nX-EVIL:1"
year: 2027
place: { clock: America/Denver, last frost: about 6 May, first frost: about 2 Oct }
people:
  "Ann ${EVIL}": { gardens: Wed 17-20 and Sat 8-14, home: every day }
beds:
  "Bed ${EVIL}\\nX-EVIL:2":
    is: 24 x 4 ft
    crops:
      - name: "beets ${EVIL}"
        crop: beet
        variety: "\\"><img src=x onerror=alert(1)>\\nX-EVIL:3"
        rows: 2
      - name: "carrots\\r\\nEND:VCALENDAR\\r\\nX-EVIL:4"
        crop: carrot
        rows: 2
`;

  type Handed = { readonly owner: string; readonly people: readonly { readonly path: string }[] };

  /** Every page and feed of a person's own link, and of the owner's. */
  async function everything(): Promise<readonly string[]> {
    const links = await call(`${await linkAt(running, "evil", "admin")}links`);
    const { owner, people } = JSON.parse(textOf(links)) as Handed;
    const own = new URL(people[0]?.path ?? "", running.origin).href.replace("sessions.ics", "");
    const bases = [new URL(owner, running.origin).href, own];
    const looks = [
      "",
      "frost",
      "frost?low=28",
      "pictures",
      "season.svg",
      "frost.svg",
      "soil.svg",
      "sheet",
    ];
    const feeds = ["sessions.ics", "tasks.ics", "household.ics", "warnings.ics"];
    const feed = textOf(await call(`${own}tasks.ics`));
    const jobs = jobsIn(feed).map((one) => `on/${one}`);
    return bases.flatMap((base) => [...looks, ...feeds, ...jobs].map((rest) => base + rest));
  }

  test("are nothing but names on every page, and in every feed", async () => {
    await mustPublish(running, "evil", TEXT);
    const seen = { pages: 0, feeds: 0, named: 0 };
    for (const url of await everything()) {
      const answer = await call(url);
      const text = textOf(answer);
      expect(answer.status, url).toBe(200);
      expect(answer.headers["x-content-type-options"]).toBe("nosniff");
      if (answer.headers["content-type"]?.startsWith("text/calendar")) {
        seen.feeds += 1;
        expect(text).not.toMatch(/^X-EVIL/m);
        const asked = { url, gzip: false, held: {} };
        expect(wrongIn(asked, await poll(asked), true), url).toEqual([]);
      } else {
        seen.pages += 1;
        seen.named += /&lt;script&gt;/i.test(text) ? 1 : 0;
        const strange = text.replace(OWN_SCRIPT, "");
        expect(strange, url).not.toMatch(/<script|<img src=x/i);
        expect(answer.headers["content-security-policy"]).toContain("default-src 'none'");
      }
    }
    expect(seen.feeds).toBe(8);
    expect(seen.pages).toBeGreaterThan(20);
    expect(seen.named).toBeGreaterThan(20);
  });
});
