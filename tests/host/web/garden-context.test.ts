import { describe, expect, test, vi } from "vitest";
import { storeBuildRecord } from "../../../src/host/store/build.ts";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { deleteGarden } from "../../../src/host/store/leaving.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import {
  catchUpIfOwed,
  type GardenContext,
  isBuildOwed,
  nextRing,
  writeAndRebuild,
} from "../../../src/host/web/garden-context.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "../store/feeds.ts";
import { firstOf, SAVED_AT } from "../store/made.ts";

const BUILT = {
  ...{ number: 1, revision: 1, code: "code 1", until: SAVED_AT + 100, line: 0, baselineOf: null },
  ...{ failures: 0, retryAt: 0 },
};

function contextOf(sql: SqlStore, over: Partial<GardenContext> = {}) {
  const spies = { ring: vi.fn(), rebuild: vi.fn(), catchUp: vi.fn() };
  const rest = { sql, code: "code 1", now: () => SAVED_AT, copies: null };
  return { ...rest, ...spies, ...over } as unknown as GardenContext & typeof spies;
}

/** A garden whose year is built as of its plan. */
function built(sql: SqlStore): void {
  savePlan(sql, firstOf("built"));
  storeBuildRecord(sql, BUILT);
}

describe("a build is owed", () => {
  test("where plans, diary, code or day are others than the last build's", async () => {
    await inStore("owed", (sql) => {
      built(sql);
      const owed = (over: Partial<GardenContext> = {}) => isBuildOwed(contextOf(sql, over));
      expect(owed()).toBe(false);
      expect(owed({ code: "code 2" })).toBe(true);
      expect(owed({ now: () => SAVED_AT + 99 })).toBe(false);
      expect(owed({ now: () => SAVED_AT + 100 })).toBe(true);
      savePlan(sql, firstOf("built", { base: 1 }));
      expect(owed()).toBe(true);
    });
  });

  test("where a feed shows an earlier build, and never where there is no garden", async () => {
    await inStore("feeds-owed", (sql) => {
      expect(isBuildOwed(contextOf(sql))).toBe(false);
      built(sql);
      storeFeed(sql, writtenFeed("x", { build: 1 }));
      expect(isBuildOwed(contextOf(sql))).toBe(false);
      storeFeed(sql, writtenFeed("x", { build: 0 }));
      expect(isBuildOwed(contextOf(sql))).toBe(true);
      deleteGarden(sql, SAVED_AT);
      expect(isBuildOwed(contextOf(sql))).toBe(false);
    });
  });

  test("and begun by a request, but not in the pause after one that failed", async () => {
    await inStore("pause", (sql) => {
      built(sql);
      const begun = (now: number, code = "code 2") => {
        const context = contextOf(sql, { now: () => now, code });
        catchUpIfOwed(context);
        return context.catchUp.mock.calls.length;
      };
      storeBuildRecord(sql, { ...BUILT, failures: 1, retryAt: SAVED_AT + 60 });
      expect([begun(SAVED_AT + 59), begun(SAVED_AT + 60)]).toEqual([0, 1]);
      expect(begun(SAVED_AT + 60, "code 1")).toBe(0);
    });
  });
});

test("the alarm rings when the day turns; where a build is owed at once, or after its pause", async () => {
  await inStore("rings", (sql) => {
    expect(nextRing(contextOf(sql))).toBeNull();
    built(sql);
    expect(nextRing(contextOf(sql))).toBe(SAVED_AT + 100);
    expect(nextRing(contextOf(sql, { code: "code 2" }))).toBe(SAVED_AT);
    storeBuildRecord(sql, { ...BUILT, failures: 1, retryAt: SAVED_AT + 60 });
    expect(nextRing(contextOf(sql, { code: "code 2" }))).toBe(SAVED_AT + 60);
  });
});

describe("a write", () => {
  test("that changes something sets the alarm with it and begins a build behind it", async () => {
    await inStore("writes", (sql) => {
      const context = contextOf(sql);
      expect(
        writeAndRebuild(
          context,
          () => 7,
          (seven) => seven === 7,
        ),
      ).toBe(7);
      expect(context.ring).toHaveBeenCalledExactlyOnceWith(SAVED_AT + 60_000);
      expect(context.rebuild).toHaveBeenCalledOnce();
    });
  });

  test("that changes nothing sets none and begins none, and one that fails leaves nothing", async () => {
    await inStore("no-writes", (sql) => {
      const context = contextOf(sql);
      writeAndRebuild(context, () => false, Boolean);
      const fails = () => {
        savePlan(sql, firstOf("no-writes"));
        throw new Error("half way");
      };
      expect(() => writeAndRebuild(context, fails, Boolean)).toThrow("half way");
      expect(sql.rows("SELECT * FROM garden")).toEqual([]);
      expect([context.ring, context.rebuild].map(({ mock }) => mock.calls)).toEqual([[], []]);
    });
  });
});
