import { describe, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import { type ArchivedGarden, readArchive } from "../../../src/host/backup/read-archive.ts";
import { readPlans, restoreGarden } from "../../../src/host/backup/restore.ts";
import { addLine } from "../../../src/host/store/diary.ts";
import { feedRecord } from "../../../src/host/store/feeds.ts";
import { gardenRecord } from "../../../src/host/store/gardens.ts";
import { deleteGarden } from "../../../src/host/store/leaving.ts";
import { isRevoked } from "../../../src/host/store/links.ts";
import { plansInForce, savePlan } from "../../../src/host/store/plans.ts";
import { inStore } from "../in-store.ts";
import { bare, firstOf, SAVED_AT } from "../store/made.ts";
import { engine } from "../web/garden.ts";
import { filesOf, snapshotOf, zipped } from "./archived.ts";

const SNAPSHOT = snapshotOf({
  ...{ owner: 123_456, people: ["oda"] },
  revoked: [{ role: "reader", person: null, serial: 1, at: 1000 }],
  feeds: [
    ...[{ role: "helper", person: "oda", serial: 1, feed: "sessions.ics" }].map((feed) => ({
      ...feed,
      lastModified: 5000,
      events: { a: [4, 5000] },
    })),
  ],
});
const ARCHIVED: ArchivedGarden = readArchive(zipped(filesOf(SNAPSHOT)));
const plans: ReadonlyMap<number, Plan> = new Map([[2027, bare("Weir")]]);
const target = { garden: "weir", origin: "https://garden.example", now: SAVED_AT, code: "code 2" };
const put = (over: boolean) => ({ plans, target: { ...target, over } });

describe("a garden is made from an archive", () => {
  test("with its links and what calendars were told, under its own id", async () => {
    await inStore("weir", (sql) => {
      expect(restoreGarden(sql, ARCHIVED, put(false))).toBeNull();
      expect(gardenRecord(sql)).toMatchObject({ id: "weir", uids: "weir", owner: 123_456 });
      expect(isRevoked(sql, "reader-1")).toBe(true);
      const feed = { link: "helper-oda-1", feed: "sessions.ics" };
      expect(feedRecord(sql, feed)).toMatchObject({ build: 0, lastModified: 5000 });
      expect(plansInForce(sql)).toMatchObject([{ year: 2027, version: 1, readBy: "code 2" }]);
    });
  });

  test("with links anew under another, and the UIDs it had", async () => {
    await inStore("mill", (sql) => {
      const other = { plans, target: { ...target, garden: "mill", over: false } };
      expect(restoreGarden(sql, ARCHIVED, other)).toBeNull();
      expect(gardenRecord(sql)).toMatchObject({ id: "mill", uids: "weir", owner: 1 });
      expect(isRevoked(sql, "reader-1")).toBe(false);
    });
  });
});

test("in the place of another only by the word for it: its diary goes, its owner's link stays", async () => {
  await inStore("taken", (sql) => {
    savePlan(sql, firstOf("weir"));
    savePlan(sql, firstOf("weir", { base: 1 }));
    for (const text of ["a", "b", "c"])
      addLine(sql, {
        ...{ day: dayOrThrow(2027, 5, 8), text, task: null },
        ...{ person: null, saidAt: SAVED_AT },
      });
    const before = gardenRecord(sql);
    expect(restoreGarden(sql, ARCHIVED, put(false))).toBe("not empty");
    expect(gardenRecord(sql)).toEqual(before);
    expect(restoreGarden(sql, ARCHIVED, put(true))).toBeNull();
    expect(sql.rows("SELECT id, text FROM diary")).toEqual([{ id: 1, text: "done" }]);
    expect(gardenRecord(sql)).toMatchObject({ owner: 1 });
    expect(gardenRecord(sql)?.revision).toBeGreaterThan(before?.revision ?? 0);
  });
});

test("never where a garden was deleted for good, and what fails half way leaves all as it was", async () => {
  await inStore("ends", (sql) => {
    const { versions, ...rest } = ARCHIVED;
    const twice = { ...rest, versions: [...versions, ...versions] };
    expect(() => restoreGarden(sql, twice, put(false))).toThrow();
    expect(gardenRecord(sql)).toBeNull();
    deleteGarden(sql, SAVED_AT);
    expect(restoreGarden(sql, ARCHIVED, put(true))).toBe("gone");
  });
});

test("of each year the newest version is read, and what is wrong with it is told with its place", () => {
  const [version] = ARCHIVED.versions;
  if (version === undefined) throw new Error("no version");
  const text = "name Weir\nyear 2027\n";
  const versions = [
    { ...version, text: "wrong" },
    { ...version, version: 2, text },
  ];
  expect([...(readPlans({ ...ARCHIVED, versions }, "weir", engine).plans?.keys() ?? [])]).toEqual([
    2027,
  ]);
  const reversed = [...versions].reverse();
  expect(readPlans({ ...ARCHIVED, versions: reversed }, "weir", engine)).toEqual({
    plans: null,
    problems: ["2027.yaml:1:1: wrong. something else."],
  });
});
