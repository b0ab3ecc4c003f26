import { describe, expect, test } from "vitest";
import {
  advanceLedger,
  type Ledger,
  type LedgerEvent,
  readLedger,
  type StoredLedger,
  wholeSecond,
} from "../../../src/views/calendar/ledger.ts";

const NOON = Date.UTC(2027, 4, 1, 12);
const SECOND = 1000;
const DAY = 86_400_000;

const telling = (key: string, print: string, when = "day 1"): LedgerEvent => ({
  key,
  fingerprint: print,
  when,
  write: ({ sequence, stamp }) => `${print} ${when} ${sequence} ${stamp}`,
});
const keeping = (ledger: Ledger | null, cause: number, ...tellings: LedgerEvent[]) =>
  advanceLedger(tellings, cause, ledger).ledger;

describe("the ledger", () => {
  test("a new event starts at sequence 0 with the cause, cut to its second", () => {
    const { ledger, texts } = advanceLedger([telling("a", "p")], NOON + 789, null);
    expect(ledger.entries.a).toEqual({
      fingerprint: "p",
      sequence: 0,
      stamp: NOON,
      when: "day 1",
      text: `p day 1 0 ${NOON}`,
    });
    expect(texts).toEqual([`p day 1 0 ${NOON}`]);
  });

  test("what is unchanged keeps its entry and is not written again", () => {
    const first = keeping(null, NOON, telling("a", "p"));
    const unwritten = {
      ...telling("a", "p"),
      write: () => {
        throw new Error("written again");
      },
    };
    const { ledger, texts } = advanceLedger([unwritten], NOON + DAY, first);
    expect(ledger).toEqual(first);
    expect(texts).toEqual([first.entries.a?.text]);
  });

  test("a change of text raises the stamp and not the sequence", () => {
    const second = keeping(keeping(null, NOON, telling("a", "p")), NOON + DAY, telling("a", "q"));
    expect(second.entries.a).toMatchObject({ sequence: 0, stamp: NOON + DAY, fingerprint: "q" });
  });

  test("a stamp of a clock that ran ahead comes back with the next change, and the sequence rises", () => {
    const ahead = keeping(null, NOON + 4000 * DAY, telling("a", "p"), telling("b", "p"));
    const now = NOON + DAY;
    const back = keeping(ahead, now, telling("a", "q"));
    expect(back.entries.a).toMatchObject({ sequence: 1, stamp: now, fingerprint: "q" });
    expect(back.entries.b).toMatchObject({ sequence: 1, stamp: now, text: null });
    expect(keeping(back, now, telling("a", "q"))).toEqual(back);
    const later = keeping(back, now, telling("a", "q"), telling("b", "r"));
    expect(later.entries.b).toMatchObject({ sequence: 1, stamp: now + SECOND });
    const soon = keeping(keeping(null, NOON + DAY, telling("a", "p")), NOON, telling("a", "q"));
    expect(soon.entries.a).toMatchObject({ sequence: 0, stamp: NOON + DAY + SECOND });
  });

  test("a change of days raises both", () => {
    const first = keeping(null, NOON, telling("a", "p"));
    const second = keeping(first, NOON + DAY, telling("a", "q", "day 2"));
    expect(second.entries.a).toMatchObject({ sequence: 1, stamp: NOON + DAY });
  });

  test("two changes within one second are a second apart", () => {
    const first = keeping(null, NOON + 100, telling("a", "p"));
    const second = keeping(first, NOON + 500, telling("a", "q"));
    const third = keeping(second, NOON + 900, telling("a", "r"));
    expect(second.entries.a?.stamp).toBe(NOON + SECOND);
    expect(third.entries.a?.stamp).toBe(NOON + 2 * SECOND);
  });

  test("a cause older than the last change never takes a stamp back", () => {
    const first = keeping(null, NOON, telling("a", "p"));
    const second = keeping(first, NOON - DAY, telling("a", "q"));
    expect(second.entries.a?.stamp).toBe(NOON + SECOND);
  });

  test("what is gone leaves a tombstone that writing again keeps", () => {
    const first = keeping(null, NOON, telling("a", "p"), telling("b", "p"));
    const second = keeping(first, NOON + DAY, telling("b", "p"));
    expect(second.entries.a).toMatchObject({ text: null, sequence: 0, stamp: NOON + DAY });
    expect(keeping(second, NOON + DAY, telling("b", "p"))).toEqual(second);
    expect(keeping(second, NOON + 9 * DAY, telling("b", "p"))).toEqual(second);
  });

  test("what comes back is newer than its going and goes on counting", () => {
    const first = keeping(null, NOON, telling("a", "p"));
    const moved = keeping(first, NOON, telling("a", "q", "day 2"));
    const gone = keeping(moved, NOON);
    const back = keeping(gone, NOON, telling("a", "q", "day 2"));
    const backMoved = keeping(gone, NOON, telling("a", "r", "day 3"));
    expect(gone.entries.a?.stamp).toBe(NOON + 2 * SECOND);
    expect(back.entries.a).toMatchObject({ sequence: 1, stamp: NOON + 3 * SECOND });
    expect(backMoved.entries.a).toMatchObject({ sequence: 2, stamp: NOON + 3 * SECOND });
  });

  test("a tombstone is dropped 400 days before the cause, not earlier", () => {
    const gone = keeping(keeping(null, NOON, telling("a", "p")), NOON + DAY);
    expect(Object.keys(keeping(gone, NOON + 401 * DAY).entries)).toEqual(["a"]);
    expect(Object.keys(keeping(gone, NOON + 401 * DAY + SECOND).entries)).toEqual([]);
  });

  test("keys are sorted, so that equal ledgers are equal as text, in whatever order they came", () => {
    const one = keeping(null, NOON, telling("b", "p"), telling("a", "p"));
    const other = keeping(null, NOON, telling("a", "p"), telling("b", "p"));
    expect(JSON.stringify(one)).toBe(JSON.stringify(other));
  });

  test("a key that is a word of the language is a key like others", () => {
    const keys = ["__proto__", "constructor", "toString"];
    const first = keeping(null, NOON, ...keys.map((key) => telling(key, "p")));
    const kept: Ledger = JSON.parse(JSON.stringify(first));
    expect(Object.keys(first.entries)).toEqual(keys);
    expect(keeping(kept, NOON + DAY, ...keys.map((key) => telling(key, "p")))).toEqual(kept);
  });
});

test("a whole second is cut and not rounded, before 1970 too", () => {
  expect(wholeSecond(1999)).toBe(1000);
  expect(wholeSecond(-1)).toBe(-1000);
});

test("a ledger stored before its entries held fingerprints is read and revises nothing", () => {
  const first = advanceLedger([telling("a", "p")], NOON, null);
  const { fingerprint, ...rest } = first.ledger.entries.a ?? {};
  const stored = { entries: { a: { ...rest, print: fingerprint } } } as StoredLedger;
  expect(advanceLedger([telling("a", "p")], NOON + 1000, readLedger(stored))).toEqual(first);
});
