import { expect, test } from "vitest";
import {
  gardenRecord,
  loadFullPlans,
  loadGarden,
  zoneOf,
} from "../../../src/host/store/gardens.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { inStore } from "../in-store.ts";
import { firstOf, SAVED_AT } from "./made.ts";

test("a garden that is not there has no record", async () => {
  expect(await inStore("nowhere", gardenRecord)).toBeNull();
  expect(await inStore("nowhere", loadGarden)).toBeNull();
});

test("a garden's record says who it is and when it last changed", async () => {
  await inStore("hill", (sql) => savePlan(sql, firstOf("hill")));
  expect(await inStore("hill", gardenRecord)).toEqual({
    ...{
      id: "hill",
      uids: "hill",
      revision: 1,
      changedAt: SAVED_AT,
      origin: "https://garden.example",
    },
    owner: 1,
  });
});

test("its days turn by the newest plan's clock", async () => {
  await inStore("glen", (sql) => {
    savePlan(sql, firstOf("glen"));
    const stored = loadGarden(sql);
    expect(stored && zoneOf(stored)).toBe("UTC");
  });
});

test("a plan whose reading was cut short can't be built from, and says which", async () => {
  await inStore("fen", (sql) => {
    savePlan(sql, firstOf("fen"));
    sql.rows("UPDATE pieces SET bytes = substr(bytes, 1, 9)");
    const stored = loadGarden(sql);
    expect(() => stored && loadFullPlans(sql, stored)).toThrow("the plan of 2027 can't be read");
  });
});
