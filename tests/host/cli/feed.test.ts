import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { faultsOf } from "../../strict.ts";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const uids = (text: string) => [...text.matchAll(/^UID:(.+)\r$/gm)].map((found) => found[1]);

test("without a ledger the calendar is whole, and it is said to be for a single import", async () => {
  const { exit, out, err } = await sowbell(["feed", folderOf({ "2027.yaml": PLAN })]);
  expect(exit).toBe(0);
  expect(faultsOf(bytes(out))).toEqual([]);
  expect(err).toContain("single import");
});

test("each kind, a person, a bed and quiet choose what is shown", async () => {
  const folder = folderOf({ "2027.yaml": PLAN });
  const of = async (...more: readonly string[]) => (await sowbell(["feed", folder, ...more])).out;
  const [sessions, tasks, warnings] = [
    await of(),
    await of("--kind", "tasks"),
    await of("--kind", "warnings"),
  ];
  expect(uids(tasks).length).toBeGreaterThan(uids(sessions).length);
  expect(uids(warnings)).toHaveLength(2);
  expect(await of("--for", "ada")).toContain("NAME:Back Step: Ada");
  expect(await of("--quiet")).not.toContain("VALARM");
  const bed = await of("--kind", "tasks", "--bed", "Long bed");
  expect(bed).toContain("Thin beets");
});

test("with a ledger a second run changes nothing, and a changed plan raises what it changed alone", async () => {
  const folder = folderOf({ "2027.yaml": PLAN });
  const ledger = join(folder, "kept.json");
  const call = ["feed", folder, "--kind", "tasks", "--ledger", ledger];
  const first = await sowbell([...call, "--on", "2027-03-01"]);
  expect(first.err).toBe("");
  expect((await sowbell([...call, "--on", "2027-03-01"])).out).toBe(first.out);
  writeFileSync(
    join(folder, "2027.yaml"),
    PLAN.replace("tomato: 4 plants", "tomato: 5 plants, set out 5 June"),
  );
  const moved = await sowbell([...call, "--on", "2027-03-02"]);
  expect(new Set(uids(moved.out))).not.toEqual(new Set());
  expect(moved.out).toContain("SEQUENCE:1");
  expect(existsSync(`${ledger}.new`)).toBe(false);
  expect(Object.keys(JSON.parse(readFileSync(ledger, "utf8")))).toEqual(["ledger", "standing"]);
});

test("a person, kind, bed, day or ledger that is none is wrong usage", async () => {
  const folder = folderOf({ "2027.yaml": PLAN, "odd.json": "{" });
  for (const more of [
    ["--for", "Zed"],
    ["--kind", "all"],
    ["--bed", "moon"],
    ["--on", "2027-02-30"],
    ["--ledger", join(folder, "odd.json")],
  ]) {
    const { exit, out, err } = await sowbell(["feed", folder, ...more]);
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain(more[1]);
  }
});
