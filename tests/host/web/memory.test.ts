import { expect, test } from "vitest";
import type { Polled } from "../../../src/host/store/feeds.ts";
import { cachePoll, forget, type Memory, recall } from "../../../src/host/web/memory.ts";

const key = (garden: string, feed = "tasks.ics") => ({ garden, link: "owner-1", feed });

function polled(packed: string | null): Polled {
  const made = { revision: 1, code: "code 1", until: 9 };
  return {
    revoked: false,
    revision: 1,
    stored: { packed, size: 1, print: "p", lastModified: 0, ...made },
  };
}

test("what was found is good for a second and not longer, nor before it was found", () => {
  const memory: Memory = new Map();
  cachePoll(memory, key("lane"), polled("body"), 5000);
  const at = (now: number) => recall(memory, key("lane"), { now, held: null });
  expect(at(5999)).not.toBeNull();
  expect(at(6000)).toBeNull();
  expect(at(4999)).toBeNull();
});

test("what came without its body answers only whoever holds it", () => {
  const memory: Memory = new Map();
  cachePoll(memory, key("lane"), polled(null), 0);
  expect(recall(memory, key("lane"), { now: 1, held: "p" })).not.toBeNull();
  expect(recall(memory, key("lane"), { now: 1, held: "other" })).toBeNull();
  expect(recall(memory, key("lane"), { now: 1, held: null })).toBeNull();
});

test("a garden that changes is forgotten whole, and no other", () => {
  const memory: Memory = new Map();
  for (const garden of ["lane", "lane-2"])
    for (const feed of ["tasks.ics", "sessions.ics"])
      cachePoll(memory, key(garden, feed), polled("x"), 0);
  forget(memory, "lane");
  expect([...memory.keys()]).toEqual(["lane-2/owner-1/tasks.ics", "lane-2/owner-1/sessions.ics"]);
});

test("no more than a hundred feeds are remembered, the latest of them", () => {
  const memory: Memory = new Map();
  for (let at = 0; at < 150; at += 1) cachePoll(memory, key(`lane-${at}`), polled("x"), at);
  expect(memory.size).toBe(100);
  expect(recall(memory, key("lane-149"), { now: 149, held: null })).not.toBeNull();
});
