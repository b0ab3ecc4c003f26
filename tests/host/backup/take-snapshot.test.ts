import { expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { readSnapshot } from "../../../src/host/backup/snapshot.ts";
import { takeSnapshot } from "../../../src/host/backup/take-snapshot.ts";
import { addLine } from "../../../src/host/store/diary.ts";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { loadGarden } from "../../../src/host/store/gardens.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { allVersions, savePlan } from "../../../src/host/store/plans.ts";
import { takeBack } from "../../../src/host/store/taken-back.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "../store/feeds.ts";
import { bare, firstOf, SAVED_AT } from "../store/made.ts";

test("a snapshot has all that is no text of a plan, as it can be read again, and nothing that opens anything", async () => {
  await inStore("weir", (sql) => {
    savePlan(
      sql,
      firstOf("weir", { plan: bare("Weir", 2027, ["Oda"]), beside: { "a.yaml": "x" } }),
    );
    for (const text of ["done", "flood"])
      addLine(sql, {
        ...{ day: dayOrThrow(2027, 5, 8), text, task: "2027/beet/thin/1" },
        ...{ person: "oda", saidAt: SAVED_AT },
      });
    takeBack(sql, { person: "oda", first: 2, last: 2 }, SAVED_AT);
    revoke(sql, "helper-oda-1", SAVED_AT);
    const entry = { fingerprint: "p", sequence: 3, stamp: 7000, when: "", text: "" };
    storeFeed(sql, writtenFeed("x", { ledger: { entries: { a: entry } } }));
    const stored = loadGarden(sql);
    if (stored === null) throw new Error("no garden");
    const snapshot = takeSnapshot(sql, stored, allVersions(sql));
    expect(snapshot).toMatchObject({
      ...{ garden: "weir", uids: "weir", owner: 1, people: ["oda"] },
      versions: [{ year: 2027, version: 1, beside: { "a.yaml": expect.stringMatching(/^2d711/) } }],
      diary: [
        { id: 1, day: "2027-05-08", text: "done" },
        { id: 2, text: "flood" },
      ],
      takenBack: [{ person: "oda", first: 2, last: 2 }],
      revoked: [{ role: "helper", person: "oda", serial: 1, at: SAVED_AT }],
      feeds: [{ events: { a: [3, 7000] } }],
    });
    expect(readSnapshot(JSON.stringify(snapshot))).toEqual({ snapshot, wrong: null });
    expect(JSON.stringify(snapshot)).not.toMatch(/https?:|helper-|owner-|reader-/);
  });
});
