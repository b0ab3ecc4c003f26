import { describe, expect, test } from "vitest";
import { householdOf } from "../../../src/engine/schedule/household.ts";
import {
  chooseDaily,
  chooseSession,
  eligible,
  loadKey,
} from "../../../src/engine/schedule/session.ts";
import { hours, IMRE, inDays, ODA, personOf, SATURDAY, taskOf, windowOf } from "./given.ts";

const keys = (people: readonly { readonly key: string }[]) => people.map((person) => person.key);
const said = (note: { readonly pieces: readonly unknown[] } | null) => JSON.stringify(note?.pieces);
const SUNDAY = inDays(1);

describe("who may be asked", () => {
  const household = householdOf([IMRE, ODA], []);

  test("is everybody for work that is nobody's own", () => {
    expect(keys(eligible(household, [taskOf()]))).toEqual(["imre", "oda"]);
  });

  test("is the one whose it is", () => {
    expect(keys(eligible(household, [taskOf({ whose: "oda" })]))).toEqual(["oda"]);
  });

  test("is nobody who leaves such work out", () => {
    const weak = householdOf([personOf("imre", { leaveOut: ["lifting"] }), ODA], []);
    expect(keys(eligible(weak, [taskOf({ kinds: ["lifting"] })]))).toEqual(["oda"]);
  });

  test("is nobody who leaves that practice out", () => {
    const bored = householdOf([personOf("imre", { leaveOut: ["thin"] }), ODA], []);
    expect(keys(eligible(bored, [taskOf()]))).toEqual(["oda"]);
  });

  test("is everybody after all where all leave it out", () => {
    const bored = householdOf([personOf("imre", { leaveOut: ["thin"] })], []);
    expect(keys(eligible(bored, [taskOf()]))).toEqual(["imre"]);
  });
});

describe("work that is somebody's own", () => {
  const away = [{ person: "imre", from: inDays(-10), to: inDays(10) }];
  const household = householdOf([IMRE, ODA], away);
  const his = [taskOf({ whose: "imre", window: windowOf(3, 3) })];

  test("falls to another where they are away while it matters, and says so", () => {
    const choice = chooseSession(household, his, windowOf(3, 3), new Map());
    expect(choice).toMatchObject({ day: SUNDAY, people: ["oda"] });
    expect(choice.note?.for).toBe("household");
    expect(said(choice.note)).toMatch(/imre.*not there in time/);
  });

  test("falls to another also where it only wants somebody at home", () => {
    expect(chooseDaily(household, his, windowOf(0, 0))).toMatchObject({ people: ["oda"] });
  });

  test("stays their own where they are there, and never goes to who leaves such work out", () => {
    const there = householdOf([IMRE, ODA], []);
    expect(chooseSession(there, his, windowOf(3, 3), new Map()).people).toEqual(["imre"]);
    const weak = householdOf([IMRE, { ...ODA, leaveOut: ["lifting"] }], away);
    const heavy = [taskOf({ whose: "imre", kinds: ["lifting"] })];
    const late = chooseSession(weak, heavy, windowOf(3, 3), new Map());
    expect(late).toMatchObject({ day: inDays(14), people: ["imre"] });
  });
});

describe("work that wants somebody's hours", () => {
  const choose = (
    household = householdOf([IMRE, ODA], []),
    window = windowOf(7, 7),
    load = new Map<string, number>(),
  ) => chooseSession(household, [taskOf({ window })], window, load);

  test("falls to the working day nearest its due day", () => {
    expect(choose()).toEqual({ day: SATURDAY, people: ["imre"], note: null });
  });

  test("falls on the better side where both are as near", () => {
    const due = inDays(4);
    const saturdays = householdOf([IMRE, personOf("ada", { gardens: [hours(3, 9, 12)] })], []);
    const around = { earliest: SATURDAY, due: inDays(1), latest: due, better: "earlier" } as const;
    expect(choose(saturdays, around).day).toBe(SATURDAY);
  });

  test("takes another day rather than more minutes than somebody has", () => {
    const load = new Map([[loadKey("imre", SATURDAY), 170]]);
    expect(choose(undefined, undefined, load)).toMatchObject({ day: SUNDAY, people: ["oda"] });
  });

  test("goes to who has less to do, on a day that both garden", () => {
    const both = householdOf([IMRE, personOf("oda", { gardens: [hours(6, 9, 12)] })], []);
    const load = new Map([
      [loadKey("imre", SATURDAY), 60],
      [loadKey("oda", SATURDAY), 20],
    ]);
    expect(choose(both, undefined, load).people).toEqual(["oda"]);
  });

  test("is worked round an absence, and the household is told whose", () => {
    const away = [{ person: "imre", from: SATURDAY, to: inDays(2) }];
    const choice = choose(householdOf([IMRE, ODA], away));
    expect(choice).toMatchObject({ day: SUNDAY, people: ["oda"] });
    expect(choice.note?.for).toBe("household");
    expect(said(choice.note)).toMatch(/imre.*is away till/);
  });

  test("says that everybody is away where all are", () => {
    const away = [{ person: null, from: SATURDAY, to: SATURDAY }];
    const choice = choose(householdOf([IMRE, ODA], away));
    expect(choice).toMatchObject({ day: SUNDAY, people: ["oda"] });
    expect(said(choice.note)).toMatch(/"everybody"," is away till/);
  });

  test("names nobody who would not have gardened that day either", () => {
    const away = [{ person: "imre", from: inDays(1), to: inDays(3) }];
    const household = householdOf([IMRE, personOf("ada", { gardens: [hours(2, 9, 12)] })], away);
    const choice = choose(household, windowOf(0, 7, "later", inDays(2)));
    expect(choice).toMatchObject({ day: inDays(3), people: ["ada"], note: null });
  });

  test("falls to a day at home where nobody gardens within its window", () => {
    const choice = choose(householdOf([IMRE, ODA], []), windowOf(1, 1, "later", inDays(4)));
    expect(choice).toMatchObject({ day: inDays(4), people: ["imre"] });
    expect(said(choice.note)).toMatch(/a day at home/);
  });

  test("falls to the first working day after its window where nobody is about, and says so", () => {
    const away = [{ person: null, from: inDays(-3), to: inDays(3) }];
    const choice = choose(householdOf([IMRE, ODA], away), windowOf(2, 2));
    expect(choice).toMatchObject({ day: inDays(7), people: ["imre"] });
    expect(said(choice.note)).toMatch(/Nobody is free by/);
  });

  test("stays on its due day with nobody, where nobody is free for weeks, and says so", () => {
    const away = [{ person: null, from: inDays(-30), to: inDays(90) }];
    const choice = choose(householdOf([IMRE, ODA], away));
    expect(choice).toMatchObject({ day: SATURDAY, people: [] });
    expect(said(choice.note)).toMatch(/ask a neighbour/);
  });

  test("may fall on any day to whoever gives no hours", () => {
    const choice = choose(householdOf([personOf("ada")], []), windowOf(7, 7, "later", inDays(3)));
    expect(choice).toEqual({ day: inDays(3), people: ["ada"], note: null });
  });
});

describe("work for anybody about", () => {
  const task = taskOf({ rhythm: "daily", window: windowOf(2, 2, "later", inDays(3)) });

  test("is told to all who are, on the nearest such day", () => {
    const choice = chooseDaily(householdOf([IMRE, ODA], []), [task], windowOf(2, 2));
    expect(choice).toEqual({ day: SATURDAY, people: ["imre", "oda"], note: null });
  });

  test("leaves out who is not about that day", () => {
    const choice = chooseDaily(householdOf([IMRE, ODA], []), [task], task.window);
    expect(choice).toMatchObject({ day: inDays(3), people: ["imre"] });
  });

  test("asks for a neighbour where nobody is", () => {
    const away = [{ person: null, from: inDays(-9), to: inDays(9) }];
    const choice = chooseDaily(householdOf([IMRE, ODA], away), [task], task.window);
    expect(choice).toMatchObject({ day: inDays(3), people: [] });
    expect(said(choice.note)).toMatch(/neighbour/);
  });
});
