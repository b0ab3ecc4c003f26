import { expect, test } from "vitest";
import { readOldGarden } from "../../../../src/host/store/old/old-garden.ts";
import { formerStore, put } from "./former.ts";

test("a garden is read whole, its versions oldest first, and no other with it", async () => {
  const db = await formerStore();
  for (const id of ["lea", "lea--2"]) {
    await put(db, "gardens", { id, changed_at: 5, origin: "https://garden.example" });
    for (const version of [2, 1]) {
      const plan = { text: `${version}`, beside: "{}", file: "f", plan: "{}", read_by: "c" };
      await put(db, "plans", { garden: id, year: 2027, version, ...plan, saved_at: version });
    }
    await put(db, "diary", { garden: id, day: "2027-05-08", text: "peas up", said_at: 3 });
    await put(db, "revoked", { garden: id, link: "reader-1", revoked_at: 4 });
  }
  const lea = await readOldGarden(db, "lea");
  expect(lea.garden).toMatchObject({ id: "lea", owner: 1, owner_next: null, standing: "{}" });
  expect(lea.plans.map(({ version }) => version)).toEqual([1, 2]);
  expect(lea.diary.map(({ text }) => text)).toEqual(["peas up"]);
  expect([lea.revoked, lea.feeds, lea.goneAt]).toEqual([[{ link: "reader-1", at: 4 }], [], null]);
  expect((await readOldGarden(db, "lea--2")).garden?.id).toBe("lea--2");
});

test("a garden that is not there, and one that was deleted, are told apart", async () => {
  const db = await formerStore();
  await put(db, "gone", { garden: "closed", gone_at: 7 });
  expect(await readOldGarden(db, "nowhere")).toMatchObject({ garden: null, goneAt: null });
  expect(await readOldGarden(db, "closed")).toMatchObject({ garden: null, goneAt: 7 });
});
