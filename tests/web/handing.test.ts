import { describe, expect, test } from "vitest";
import { checkLink, keyFrom, pathOf } from "../../src/links/mac.ts";
import type { Link } from "../../src/links/segment.ts";
import type { StoredGarden } from "../../src/store/gardens.ts";
import { type Giving, linksInUse, nameOf, offerOf, pagesToGive } from "../../src/web/handing.ts";

const key = await keyFrom("a secret for tests, of more than 32 characters");

const plan = (year: number, over: Record<string, unknown> = {}) => ({
  year,
  plan: {
    name: "Quarry Lane",
    people: [{ key: "imre", name: "Imre" }],
    beds: [{ key: "root-bed", name: "Root bed" }],
    ...over,
  },
});

function giving(plans: readonly unknown[], revoked: readonly string[] = []): Giving {
  const stored = { id: "quarry-lane", plans } as unknown as StoredGarden;
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
    const imre = await pathOf(link("helper", "imre"), key);
    expect(await linksInUse(giving([plan(2027)]))).toEqual({
      garden: "quarry-lane",
      name: "Quarry Lane",
      owner,
      household: `${owner}household.ics`,
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

  test("skip every one that was revoked", async () => {
    const used = await linksInUse(giving([plan(2027)], ["owner-1", "owner-2", "helper-imre-1"]));
    expect(used.owner).toBe(await pathOf(link("owner", null, 3), key));
    expect(used.people[0]?.path).toContain("/helper-imre-2/");
  });
});

test("the pages to give are each person's and a reader's, none of them an owner's", async () => {
  const pages = await pagesToGive(giving([plan(2027)]));
  const roles = await Promise.all(
    pages.map(async ({ href }) => {
      const [, garden = "", segment = "", mac = ""] = href.split("/");
      return (await checkLink({ garden, segment, mac }, key))?.role;
    }),
  );
  expect(roles).toEqual(["helper", "reader"]);
});

describe("what a link offers", () => {
  const names = async (over: Link, plans = [plan(2027)]) => {
    const { first, more } = await offerOf(giving(plans), over, "/base/");
    return [first, more].map((offers) => offers.map(({ name }) => name));
  };

  test("to a helper is their own first", async () => {
    const [first, more] = await names(link("helper", "imre"));
    expect(first).toEqual(["Imre"]);
    expect(more).toEqual([
      "All tasks",
      "The household",
      "Root bed",
      "Warnings alone",
      "The same without reminders",
    ]);
  });

  test("to an owner is each person's, or the household's where nobody is named", async () => {
    expect((await names(link("owner")))[0]).toEqual(["Imre"]);
    const [first, more] = await names(link("owner"), [plan(2027, { people: [] })]);
    expect(first).toEqual(["The household"]);
    expect(more).not.toContain("The household");
  });

  test("to a reader is tasks, beds and warnings alone", async () => {
    const [first, more] = await names(link("reader"));
    expect(first).toEqual(["All tasks"]);
    expect(more).toEqual(["Root bed", "Warnings alone", "Tasks without reminders"]);
  });

  test("is whole addresses that end in .ics", async () => {
    const { first, more } = await offerOf(giving([plan(2027)]), link("helper", "imre"), "/base/");
    for (const { address } of [...first, ...more]) {
      expect(address).toMatch(/^https:\/\/garden\.example\/base\/[\w/-]+\.ics$/);
    }
  });
});

test("a garden without a name in its plan is still called something", () => {
  expect(nameOf(giving([]).stored)).toBe("Garden");
});
