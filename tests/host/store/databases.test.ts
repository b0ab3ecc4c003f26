import { expect, test } from "vitest";
import { databaseFor, databasesIn } from "../../../src/host/store/databases.ts";

const [one, two] = [{ name: "one" }, { name: "two" }] as unknown as [D1Database, D1Database];

test("the bindings DB, DB_2 and so on are databases by number, and nothing else is", () => {
  const found = databasesIn({ DB: one, DB_2: two, DB_02: two, SECRET: "x", DBX: two });
  expect([...found]).toEqual([
    [1, one],
    [2, two],
  ]);
});

test("a garden's id says where it lies, so that none moves when a database is added", () => {
  const before = databasesIn({ DB: one });
  const after = databasesIn({ DB: one, DB_2: two });
  for (const garden of ["quarry-lane", "k7dq2mxw", "lane-2", "2"])
    expect([databaseFor(before, garden), databaseFor(after, garden)]).toEqual([one, one]);
  expect(databaseFor(after, "k7dq2mxw--2")).toBe(two);
});

test("a garden whose database is not bound is not there", () => {
  expect(databaseFor(databasesIn({ DB: one }), "k7dq2mxw--2")).toBeNull();
});
