import { describe, expect, test, vi } from "vitest";
import { answerPoll, type PollRequest } from "../../../src/host/edge/poll.ts";
import { storeBuildRecord } from "../../../src/host/store/build.ts";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { showNextOwner } from "../../../src/host/store/owners.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import type { GardenContext } from "../../../src/host/web/garden-context.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "../store/feeds.ts";
import { firstOf, SAVED_AT } from "../store/made.ts";

const ASKED: PollRequest = {
  ...{ garden: "g", link: "owner-1", feed: "tasks.ics" },
  coding: "gzip",
  conditions: { tags: null, since: null },
};

/** A garden with one feed of its first build, and a context whose engine must not be asked for. */
function polled(sql: SqlStore, over: Partial<GardenContext> = {}) {
  savePlan(sql, firstOf("g"));
  storeBuildRecord(sql, {
    ...{ number: 1, revision: 1, code: "code 1", until: SAVED_AT + 100, line: 0 },
    ...{ baselineOf: null, failures: 0, retryAt: 0 },
  });
  for (const link of ["owner-1", "owner-2", "owner-12"])
    storeFeed(sql, writtenFeed("x", { link, print: "p" }));
  const engine = () => expect.fail("a poll asks no engine");
  const catchUp = vi.fn();
  const rest = { sql, code: "code 1", epoch: "0", now: () => SAVED_AT, engine, catchUp };
  return { ...rest, ...over } as unknown as GardenContext & { readonly catchUp: typeof catchUp };
}

describe("a poll", () => {
  test("gives the stored bytes, or that the client has them, and asks no engine", async () => {
    await inStore("bytes", async (sql) => {
      const context = polled(sql);
      const whole = await answerPoll(context, ASKED);
      expect(whole).toMatchObject({ kind: "whole", lastModified: SAVED_AT });
      const tags = whole.kind === "whole" ? whole.etag : "";
      const conditions = { tags, since: null };
      const same = await answerPoll(context, { ...ASKED, conditions });
      expect(same).toEqual({ kind: "same", etag: tags, lastModified: SAVED_AT });
      expect(context.catchUp).not.toHaveBeenCalled();
    });
  });

  test("of what is stale is answered all the same, and a build begins behind it", async () => {
    await inStore("stale", async (sql) => {
      const context = polled(sql, { now: () => SAVED_AT + 100 });
      expect((await answerPoll(context, ASKED)).kind).toBe("whole");
      expect(context.catchUp).toHaveBeenCalledOnce();
    });
  });

  test("opens nothing over a revoked link or an owner's other serial, and for a garden that is not there", async () => {
    await inStore("closed", async (sql) => {
      const kind = async (link: string) => (await answerPoll(polled(sql), { ...ASKED, link })).kind;
      expect(await kind("owner-12")).toBe("nothing");
      showNextOwner(sql, 12, 0);
      expect([await kind("owner-1"), await kind("owner-12"), await kind("owner-2")]).toEqual([
        "whole",
        "whole",
        "nothing",
      ]);
      revoke(sql, "owner-12", SAVED_AT);
      expect(await kind("owner-12")).toBe("nothing");
    });
    await inStore("nowhere", async (sql) => {
      const context = { sql, now: () => SAVED_AT } as unknown as GardenContext;
      expect(await answerPoll(context, ASKED)).toEqual({ kind: "nothing" });
    });
  });

  test("of a garden whose year can't be built is for later", async () => {
    await inStore("unbuilt", async (sql) => {
      const context = polled(sql, { buildNow: async () => false });
      sql.rows("DELETE FROM build");
      expect((await answerPoll(context, { ...ASKED, feed: "warnings.ics" })).kind).toBe("later");
    });
  });
});
