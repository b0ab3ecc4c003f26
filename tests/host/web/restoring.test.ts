import { runDurableObjectAlarm } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { beforeAll, describe, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { diaryLines } from "../../../src/host/store/diary.ts";
import { deleteGarden } from "../../../src/host/store/leaving.ts";
import { allVersions } from "../../../src/host/store/plans.ts";
import { QUARRY } from "../../gardens.ts";
import { type Kept, NOTHING_KEPT, READERS } from "../../readers.ts";
import { readStrictly, type StrictEvent } from "../../strict.ts";
import { filesOf, zipped } from "../backup/archived.ts";
import { ask, inStore, linkTo, ORIGIN, publish, settled, shellWith } from "./garden.ts";

const DAY = 86_400_000;
let now = Date.UTC(2027, 3, 20, 6);
const shell = shellWith({ engine, now: () => now });
const FEEDS = ["helper imre sessions.ics", "helper null tasks.ics", "reader null tasks.ics"];

const feedOf = async (garden: string, named: string) => {
  const [role = "", person, file] = named.split(" ");
  const link = await linkTo(garden, role as "helper", person === "null" ? null : (person ?? null));
  return `${link}${file}`;
};

const post = async (link: string, rest: string, form: Record<string, string>) =>
  ask(shell, `${link}${rest}`, {
    method: "POST",
    body: new URLSearchParams(form).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

/** A garden that was lived in: answers, words, versions, a file beside the plan, calendars asked for, and days gone by. */
async function livedIn(garden: string): Promise<void> {
  await publish(shell, garden, QUARRY);
  const owner = await linkTo(garden, "owner");
  const imre = await linkTo(garden, "helper", "imre");
  for (const feed of FEEDS) await ask(shell, await feedOf(garden, feed));
  for (let day = 0; day < 4; day += 1) {
    now += 3 * DAY;
    await runDurableObjectAlarm(env.GARDENS.getByName(garden));
    await settled(garden);
    const tasks = await inStore(garden, (sql) =>
      sql.rows<{ id: string }>("SELECT id FROM tasks WHERE card IS NOT NULL ORDER BY id"),
    );
    const task = tasks[day * 3]?.id ?? "";
    expect((await post(imre, `on/${task}`, { task, say: "done" })).status).toBe(303);
  }
  expect((await post(owner, "diary", { say: "low 29 °F", day: "2027-04-25" })).status).toBe(303);
  expect((await publish(shell, garden, `${QUARRY}# again\n`, 1)).status).toBe(200);
  expect((await post(owner, "links", { do: "revoke", link: "reader-1" })).status).toBe(303);
  for (const feed of FEEDS.slice(0, 2)) await ask(shell, await feedOf(garden, feed));
}

async function archiveOf(garden: string): Promise<Uint8Array<ArrayBuffer>> {
  const answer = await ask(shell, `${await linkTo(garden, "owner")}${garden}.zip`);
  expect(answer.status).toBe(200);
  return new Uint8Array(await answer.arrayBuffer());
}

async function put(garden: string, body: Uint8Array<ArrayBuffer>, over = false) {
  const headers: Record<string, string> = over ? { "if-match": "*" } : { "if-none-match": "*" };
  return ask(shell, `${await linkTo(garden, "admin")}archive`, { method: "PUT", headers, body });
}

async function bytesOf(garden: string, named: string): Promise<Uint8Array> {
  const answer = await ask(shell, await feedOf(garden, named));
  expect(answer.status).toBe(200);
  return new Uint8Array(await answer.arrayBuffer());
}

/** What a calendar shows of an event, whenever it was written (a reminder whose hour has passed is not) and wherever its page lies. */
const shownOf = ({ stamp, sequence, link, alarm, description, ...shown }: StrictEvent) => ({
  ...shown,
  description: description.replace(/https:\S+/g, ""),
});

const eventsOf = (bytes: Uint8Array) => readStrictly(bytes).events.map(shownOf);

let bytes: Uint8Array<ArrayBuffer>;
const before = new Map<string, Uint8Array>();

beforeAll(async () => {
  await livedIn("lane");
  bytes = await archiveOf("lane");
  for (const feed of FEEDS.slice(0, 2)) before.set(feed, await bytesOf("lane", feed));
});

describe("a garden restored", () => {
  test("under another name tells the same events with the same UIDs on the same days", async () => {
    now += 60_000;
    const answer = await put("lane-anew", bytes);
    expect([answer.status, await answer.json()]).toEqual([201, { years: [2027], lines: 5 }]);
    for (const [feed, told] of before) {
      const events = eventsOf(await bytesOf("lane-anew", feed));
      expect(events.length).toBeGreaterThan(10);
      expect(events).toEqual(eventsOf(told));
    }
    const versions = await inStore("lane-anew", (sql) => allVersions(sql));
    expect(versions).toEqual(await inStore("lane", (sql) => allVersions(sql)));
    const lines = await inStore("lane-anew", (sql) => diaryLines(sql));
    expect(lines).toEqual(await inStore("lane", (sql) => diaryLines(sql)));
  });

  test("stays calm: its archive says again what its archive said", async () => {
    const again = await put("lane-third", await archiveOf("lane-anew"));
    expect(again.status).toBe(201);
    const feed = FEEDS[0] ?? "";
    const told = before.get(feed) ?? new Uint8Array();
    expect(eventsOf(await bytesOf("lane-third", feed))).toEqual(eventsOf(told));
  });

  test("where all was lost goes on under the same links, revoked ones stay so, and every reader follows", async () => {
    const held = new Map<string, Kept>();
    for (const [feed, told] of before)
      for (const reader of READERS) {
        const answer = { status: 200, etag: '"a"', lastModified: new Date(now).toUTCString() };
        held.set(`${feed} ${reader.name}`, reader.take(NOTHING_KEPT, { ...answer, bytes: told }));
      }
    await inStore("lane", (sql) => {
      deleteGarden(sql, now);
      sql.rows("DELETE FROM gone");
    });
    now += 60_000;
    expect((await put("lane", bytes)).status).toBe(201);
    // So that there is something to follow: a job is done that stood open.
    const imre = await linkTo("lane", "helper", "imre");
    const [job] = await inStore("lane", (sql) =>
      sql.rows<{ id: string }>(
        "SELECT id FROM tasks WHERE event IS NOT NULL AND published IS NOT NULL ORDER BY id DESC",
      ),
    );
    const task = job?.id ?? "";
    expect((await post(imre, `on/${task}`, { task, say: "done" })).status).toBe(303);
    for (const feed of before.keys()) {
      const told = await bytesOf("lane", feed);
      const answer = { status: 200, etag: '"b"', lastModified: new Date(now).toUTCString() };
      for (const reader of READERS) {
        const had = held.get(`${feed} ${reader.name}`) ?? NOTHING_KEPT;
        const { shown } = reader.take(had, { ...answer, bytes: told });
        const fresh = readStrictly(told).events.map((event) => [event.uid, event] as const);
        expect(shown, reader.name).toEqual(new Map(fresh));
      }
    }
    expect((await ask(shell, await linkTo("lane", "reader"))).status).toBe(404);
    expect((await ask(shell, await linkTo("lane", "owner"))).status).toBe(200);
  });
});

describe("an archive", () => {
  test("takes no garden's place without the word for it, and then takes all of it but its links", async () => {
    await publish(shell, "other", QUARRY.replace("Quarry Lane", "Other"));
    const next = await post(await linkTo("other", "owner"), "links", { do: "next" });
    const serial = /https:[^"<]*owner-(\d+)/.exec(await next.text())?.[1] ?? "";
    const owner = await linkTo("other", "owner", null, Number(serial));
    expect((await post(owner, "links", { do: "close" })).status).toBe(303);
    expect((await put("other", bytes)).status).toBe(412);
    const none = { method: "PUT", body: bytes };
    expect((await ask(shell, `${await linkTo("other", "admin")}archive`, none)).status).toBe(428);
    expect(await (await ask(shell, owner)).text()).toContain("Other");
    expect((await put("other", bytes, true)).status).toBe(201);
    expect(await (await ask(shell, owner)).text()).toContain("Quarry Lane");
    expect((await ask(shell, await linkTo("other", "owner"))).status).toBe(404);
  });

  test("makes no garden under the id of one that was deleted for good", async () => {
    await publish(shell, "ended", QUARRY);
    await inStore("ended", (sql) => deleteGarden(sql, now));
    expect((await put("ended", bytes)).status).toBe(410);
    expect((await put("ended", bytes, true)).status).toBe(410);
  });

  test("that can't be used stores nothing and says why", async () => {
    const cut = await put("cut", bytes.slice(0, bytes.length / 2));
    expect([cut.status, await cut.json()]).toEqual([
      422,
      { problems: [expect.stringMatching(/cut short|missing|in the middle|there is no/)] },
    ]);
    const wrong = await put(
      "cut",
      zipped(filesOf(undefined, { "versions/2027-1.yaml": "bedz: 1\n" })),
    );
    expect([wrong.status, await wrong.json()]).toEqual([
      422,
      { problems: expect.arrayContaining([expect.stringMatching(/^2027\.yaml:1:1: /)]) },
    ]);
    const long = await put("cut", new Uint8Array(17 * 1024 * 1024));
    expect(await long.json()).toEqual({ problems: ["An archive may have 16 MiB."] });
    expect((await ask(shell, await linkTo("cut", "owner"))).status).toBe(404);
  });
});

const formOf = (archive: Uint8Array<ArrayBuffer>, name: string): RequestInit => {
  const body = new FormData();
  body.set("archive", new File([archive], "lane.zip"));
  body.set("name", name);
  return { method: "POST", body };
};

describe("on the page", () => {
  test("an owner puts an archive in the garden's place by its name", async () => {
    await publish(shell, "paged", QUARRY.replace("Quarry Lane", "Paged"));
    const owner = await linkTo("paged", "owner");
    const other = await ask(shell, `${owner}restore`, formOf(bytes, "Quarry Lane"));
    expect([other.status, await other.text()]).toEqual([
      400,
      expect.stringContaining("another name than the garden"),
    ]);
    const bad = await ask(shell, `${owner}restore`, formOf(bytes.slice(0, 900), "paged"));
    expect(await bad.text()).toContain("Nothing was changed.");
    const good = await ask(shell, `${owner}restore`, formOf(bytes, " PAGED "));
    expect([good.status, good.headers.get("location")]).toEqual([
      303,
      `${owner}leaving?restored=yes`,
    ]);
    expect(await (await ask(shell, `${owner}leaving?restored=yes`)).text()).toContain(
      "The garden is as its archive has it.",
    );
    const helper = await linkTo("paged", "helper", "imre");
    expect((await ask(shell, `${helper}restore`, formOf(bytes, "Quarry Lane"))).status).toBe(404);
  });

  test("an invitation makes the garden and shows the owner's link, again after an answer that was lost", async () => {
    const link = await linkTo("k7dq2mxw", "invitation");
    expect(await (await ask(shell, link)).text()).toContain(`action="${link}restore"`);
    const bad = await ask(shell, `${link}restore`, formOf(bytes.slice(0, 900), ""));
    expect(bad.status).toBe(422);
    for (let times = 0; times < 2; times += 1) {
      const answer = await ask(shell, `${link}restore`, formOf(bytes, ""));
      expect(answer.status).toBe(200);
      expect(await answer.text()).toContain(`${ORIGIN}${await linkTo("k7dq2mxw", "owner")}`);
    }
    const other = zipped(filesOf());
    expect((await ask(shell, `${link}restore`, formOf(other, ""))).status).toBe(404);
    const feed = FEEDS[0] ?? "";
    expect(eventsOf(await bytesOf("k7dq2mxw", feed)).map(({ uid }) => uid)).toEqual(
      eventsOf(before.get(feed) ?? new Uint8Array()).map(({ uid }) => uid),
    );
  });
});
