import { describe, expect, test } from "vitest";
import { keyFrom, pathOf } from "../../../src/host/links/mac.ts";
import { type Link, writeSegment } from "../../../src/host/links/segment.ts";
import type { StoredGarden } from "../../../src/host/store/gardens.ts";
import {
  bedsOf,
  gardenNameOf,
  handoutLinks,
  type LinkSource,
  linksInUse,
  offerOf,
} from "../../../src/host/web/link-offers.ts";

const key = await keyFrom("a secret for tests, of more than 32 characters");

const plan = (year: number, over: Record<string, unknown> = {}) => ({
  year,
  summary: {
    name: "Quarry Lane",
    people: [{ key: "imre", name: "Imre" }],
    beds: [{ key: "root-bed", name: "Root bed" }],
    ...over,
  },
});

function giving(plans: readonly unknown[], revoked: readonly string[] = [], owner = 1): LinkSource {
  const stored = { id: "quarry-lane", plans, owner } as unknown as StoredGarden;
  return { key, stored, revoked, origin: "https://garden.example" };
}

const link = (role: Link["role"], person: string | null = null, serial = 1): Link => ({
  garden: "quarry-lane",
  role,
  person,
  serial,
});

describe("the links in use", () => {
  test("are the owner's page, the household's calendar and each person's own, as paths", async () => {
    const owner = await pathOf(link("owner"), key);
    const household = await pathOf(link("helper"), key);
    const imre = await pathOf(link("helper", "imre"), key);
    expect(await linksInUse(giving([plan(2027)]))).toEqual({
      garden: "quarry-lane",
      name: "Quarry Lane",
      owner,
      household: `${household}household.ics`,
      people: [{ key: "imre", name: "Imre", path: `${imre}sessions.ics` }],
    });
  });

  test("stay through a new name and a year's end, by the person's key", async () => {
    const before = await linksInUse(giving([plan(2027)]));
    const renamed = plan(2028, { name: "The Lane", people: [{ key: "imre", name: "Imi" }] });
    const after = await linksInUse(giving([plan(2027), renamed]));
    expect(after.people.map(({ path }) => path)).toEqual(before.people.map(({ path }) => path));
    expect(after.people.map(({ name }) => name)).toEqual(["Imi"]);
    expect(after.name).toBe("The Lane");
  });

  test("skip every one that was revoked, and are the owner's by the record", async () => {
    const used = await linksInUse(giving([plan(2027)], ["helper-imre-1"], 3));
    expect(used.owner).toBe(await pathOf(link("owner", null, 3), key));
    expect(used.people[0]?.path).toContain("/helper-imre-2/");
  });
});

test("the links to hand on are each person's, the household's and a reader's, none of them an owner's", () => {
  const segments = (revoked: readonly string[]) =>
    handoutLinks(giving([plan(2027)], revoked)).map(({ link }) => writeSegment(link));
  expect(segments([])).toEqual(["helper-imre-1", "helper-1", "reader-1"]);
  expect(segments(["helper-1", "reader-1"])).toEqual(["helper-imre-1", "helper-2", "reader-2"]);
});

describe("what a link offers", () => {
  const names = (over: Link, plans = [plan(2027)]) => {
    const { first, more } = offerOf(giving(plans), over, "/base/");
    return [first.name, ...more.map(({ name }) => name)];
  };

  test("to a helper is their own first", () => {
    expect(names(link("helper", "imre"))).toEqual([
      "Imre",
      "All jobs, each all day",
      "The household",
      "Root bed",
      "Warnings alone",
      "The same without reminders",
    ]);
  });

  test("to the household, or to somebody no plan names any more, is the household's", () => {
    const household = names(link("helper"));
    expect(household[0]).toBe("The household");
    expect(household.slice(1)).not.toContain("The household");
    expect(names(link("helper", "imre"), [plan(2027, { people: [] })])).toEqual(household);
  });

  test("to a reader is tasks, beds and warnings alone", () => {
    expect(names(link("reader"))).toEqual([
      "All jobs, each all day",
      "Root bed",
      "Warnings alone",
      "The same without reminders",
    ]);
  });

  test("is whole addresses that end in .ics", () => {
    const { first, more } = offerOf(giving([plan(2027)]), link("helper", "imre"), "/base/");
    for (const { address } of [first, ...more]) {
      expect(address).toMatch(/^https:\/\/garden\.example\/base\/[\w/-]+\.ics$/);
    }
  });
});

test("beds are each year's once, by their newest name", () => {
  const renamed = plan(2028, {
    beds: [
      { key: "root-bed", name: "Roots" },
      { key: "bags", name: "Bags" },
    ],
  });
  const { stored } = giving([plan(2027), renamed]);
  expect(bedsOf(stored).map(({ name }) => name)).toEqual(["Roots", "Bags"]);
});

test("a garden without a name in its plan is still called something", () => {
  expect(gardenNameOf(giving([]).stored)).toBe("Garden");
});
