import { expect, test } from "vitest";
import { unzip } from "../../../src/host/store/bytes.ts";
import {
  dropFeed,
  dropFeedsOf,
  feedBody,
  feedLedger,
  feedRecord,
  feedsBehind,
  markFeed,
  mendFeeds,
  storeFeed,
  storeFeedBytes,
  storeLedger,
} from "../../../src/host/store/feeds.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import type { LedgerEntry } from "../../../src/views/calendar/ledger.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "./feeds.ts";
import { SAVED_AT } from "./made.ts";

const KEY = { link: "owner-1", feed: "tasks.ics" };

const entry = (summary: string | null, sequence = 0): LedgerEntry => {
  const text = summary && `BEGIN:VEVENT\r\nSUMMARY:${summary}\r\nEND:VEVENT\r\n`;
  return { fingerprint: `print of ${text}`, sequence, stamp: SAVED_AT, when: "day 1", text };
};

const bodyOf = (sql: SqlStore) => {
  const record = feedRecord(sql, KEY);
  const body = record && feedBody(sql, record);
  return body && unzip(body);
};

test("a feed is not there before it was written", async () => {
  await inStore("none", (sql) => {
    expect([feedRecord(sql, KEY), feedLedger(sql, KEY), bodyOf(sql)]).toEqual([null, null, null]);
  });
});

test("a feed gives back what was written, and its size in bytes", async () => {
  await inStore("written", (sql) => {
    storeFeed(sql, writtenFeed("bäch 🥕"));
    expect(feedRecord(sql, KEY)).toEqual({
      ...KEY,
      ...{ build: 1, code: "code 1", until: SAVED_AT + 1 },
      ...{ size: 10, print: "print of bäch 🥕", lastModified: SAVED_AT },
      bodySum: expect.any(Number),
    });
    expect(bodyOf(sql)).toBe("bäch 🥕");
  });
});

test("a first piece at hand is the whole where it is not full, else the rest is looked up", async () => {
  await inStore("pieces-at-hand", (sql) => {
    const record = (size: number) => ({
      ...KEY,
      build: 1,
      code: "",
      until: 0,
      size,
      print: "",
      lastModified: 0,
      bodySum: null,
    });
    const first = () =>
      sql.rows<{ readonly bytes: ArrayBuffer }>("SELECT bytes FROM pieces WHERE part = 0")[0]
        ?.bytes;
    storeFeed(sql, writtenFeed("small"));
    const small = first() ?? null;
    sql.rows("DELETE FROM pieces");
    expect(unzip(feedBody(sql, record(5), small) ?? new Uint8Array())).toBe("small");
    expect(feedBody(sql, record(6), small)).toBeNull();
    // No gzip, but it ends as one of 77 bytes.
    const long = new Uint8Array(300_000);
    new DataView(long.buffer).setUint32(long.length - 4, 77, true);
    storeFeedBytes(sql, record(77), long);
    expect(feedBody(sql, record(77), first() ?? null)).toEqual(long);
  });
});

test("a body that was cut short is none, and its record stays", async () => {
  await inStore("cut", (sql) => {
    storeFeed(sql, writtenFeed("whole"));
    sql.rows("UPDATE pieces SET bytes = substr(bytes, 1, 20)");
    expect(bodyOf(sql)).toBeNull();
    expect(feedRecord(sql, KEY)?.print).toBe("print of whole");
  });
});

test("a ledger keeps what was told of each event, and only what has changed is written", async () => {
  await inStore("ledger", (sql) => {
    const first = { entries: { a: entry("A"), b: entry("B"), c: entry(null) } };
    storeFeed(sql, writtenFeed("one", { ledger: first }));
    const over = feedLedger(sql, KEY);
    expect(over).toEqual(first);
    // What an entry was is marked by hand, so that one written again would show.
    sql.rows("UPDATE ledger SET print = 'untouched', sum = NULL");
    const { a = entry("") } = over?.entries ?? {};
    const ledger = { entries: { a, b: entry("B2", 1), d: entry("D") } };
    storeLedger(sql, { ...KEY, ledger, over });
    expect(feedLedger(sql, KEY)?.entries).toEqual({
      a: { ...entry("A"), fingerprint: "untouched" },
      b: entry("B2", 1),
      d: entry("D"),
    });
  });
});

test("feeds that show an earlier build are found, until they are marked", async () => {
  await inStore("behind", (sql) => {
    storeFeed(sql, writtenFeed("x"));
    storeFeed(sql, writtenFeed("y", { feed: "warnings.ics", build: 2 }));
    expect(feedsBehind(sql, 2).map(({ feed }) => feed)).toEqual(["tasks.ics"]);
    markFeed(sql, KEY, { build: 2, code: "code 2", until: 9 });
    expect(feedsBehind(sql, 2)).toEqual([]);
    expect(feedRecord(sql, KEY)).toMatchObject({ code: "code 2", until: 9, size: 1 });
  });
});

test("a feed is forgotten with its body and its ledger, and no other with it", async () => {
  await inStore("forgotten", (sql) => {
    const ledger = { entries: { a: entry("A") } };
    for (const feed of ["tasks.ics", "quiet/tasks.ics"])
      for (const link of ["owner-1", "owner-12"])
        storeFeed(sql, writtenFeed("x", { link, feed, ledger }));
    dropFeed(sql, KEY);
    expect([feedRecord(sql, KEY), feedLedger(sql, KEY)]).toEqual([null, null]);
    dropFeedsOf(sql, "owner-1");
    const left = (table: string) => sql.rows(`SELECT count(*) AS n FROM ${table}`);
    for (const table of ["feeds", "ledger", "pieces"]) expect(left(table)).toEqual([{ n: 2 }]);
  });
});

test("bytes that came from elsewhere are stored as they are", async () => {
  await inStore("elsewhere", (sql) => {
    const { text: _, ledger: __, over: ___, ...record } = writtenFeed("x");
    storeFeedBytes(sql, { ...record, size: 3 }, new Uint8Array([1, 2, 3]));
    expect(sql.rows("SELECT length(bytes) AS n FROM pieces")).toEqual([{ n: 3 }]);
    expect(feedRecord(sql, KEY)?.size).toBe(3);
  });
});

test("of an entry that was damaged nothing is believed: it counts as one told as often as any", async () => {
  await inStore("cut-ledger", (sql) => {
    const ledger = { entries: { a: entry("A", 2), b: entry("B") } };
    storeFeed(sql, writtenFeed("x", { ledger }));
    const { b } = feedLedger(sql, KEY)?.entries ?? {};
    for (const wrong of ["text = substr(text, 1, 30)", "sequence = 7", "stamp = 1", "days = 'x'"]) {
      sql.rows(`UPDATE ledger SET ${wrong} WHERE event = 'a'`);
      expect(feedLedger(sql, KEY)?.entries, wrong).toEqual({
        a: { fingerprint: "", sequence: b?.sequence, stamp: b?.stamp, when: "", text: null },
        b,
      });
      expect([mendFeeds(sql), mendFeeds(sql)], wrong).toEqual([1, 0]);
    }
  });
});

test("a body or a record that was damaged in the middle is none, and the feed is written anew", async () => {
  await inStore("garbled", (sql) => {
    for (const wrong of [
      ["pieces", "bytes = CAST(substr(bytes, 1, 12) || x'00' || substr(bytes, 14) AS BLOB)"],
      ["feeds", "print = 'other'"],
      ["feeds", "last_modified = 9000000000000000"],
      ["feeds", "body_sum = 1"],
    ]) {
      storeFeed(sql, writtenFeed("BEGIN:VCALENDAR and so on"));
      sql.rows(`UPDATE ${wrong[0]} SET ${wrong[1]}`);
      const record = feedRecord(sql, KEY);
      expect(record && feedBody(sql, record), wrong[1]).toBeNull();
      expect([mendFeeds(sql), mendFeeds(sql)], wrong[1]).toEqual([1, 0]);
      expect(feedsBehind(sql, 1)).toHaveLength(1);
    }
  });
});
