import { describe, expect, test } from "vitest";
import { checkLink, keyFrom, pathOf } from "../../../src/host/links/mac.ts";
import type { Link } from "../../../src/host/links/segment.ts";

const SECRET = "a secret for tests, of more than 32 characters";
const key = await keyFrom(SECRET);
const imre: Link = { garden: "quarry-lane", role: "helper", person: "imre", serial: 1 };
const CODE = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

async function partsOf(link: Link) {
  const [, garden = "", segment = "", mac = ""] = (await pathOf(link, key)).split("/");
  return { garden, segment, mac };
}

describe("a link", () => {
  test("opens what it was made for, in a path of plain letters", async () => {
    const path = await pathOf({ ...imre, garden: "garten am bäch", person: "zoë" }, key);
    expect(path).toMatch(/^\/garten~20~am~20~b~e4~ch\/helper-zo~eb~-1\/[A-Za-z0-9_-]{43}\/$/);
    expect(await checkLink(await partsOf(imre), key)).toEqual(imre);
  });

  test("is the same each time it is made", async () => {
    expect(await pathOf(imre, key)).toBe(await pathOf({ ...imre }, key));
  });

  test.each([
    ["another garden", { garden: "quarry-lan" }],
    ["another person", { segment: "helper-oda-1" }],
    ["a higher role", { segment: "owner-1" }],
    ["the deployment's role", { segment: "admin-1" }],
    ["another serial", { segment: "helper-imre-2" }],
    ["no code", { mac: "" }],
    ["a code of noughts", { mac: "A".repeat(43) }],
    ["a code too long", { mac: "A".repeat(44) }],
    ["a code that is no code", { mac: "é".repeat(43) }],
  ])("does not open %s", async (_, forged) => {
    expect(await checkLink({ ...(await partsOf(imre)), ...forged }, key)).toBeNull();
  });

  test("does not open with any letter of its code cut or changed", async () => {
    const parts = await partsOf(imre);
    for (let at = 0; at < parts.mac.length; at += 1) {
      const other = parts.mac[at] === "A" ? "B" : "A";
      const changed = parts.mac.slice(0, at) + other + parts.mac.slice(at + 1);
      expect(await checkLink({ ...parts, mac: changed }, key)).toBeNull();
      expect(await checkLink({ ...parts, mac: parts.mac.slice(0, at) }, key)).toBeNull();
    }
  });

  test("opens with one ending only, though four decode alike", async () => {
    const parts = await partsOf(imre);
    const endings = [...CODE].map((last) => parts.mac.slice(0, -1) + last);
    const alike = endings.filter((mac) => atobUrl(mac) === atobUrl(parts.mac));
    expect(alike).toHaveLength(4);
    const opened = await Promise.all(endings.map((mac) => checkLink({ ...parts, mac }, key)));
    expect(opened.filter((link) => link !== null)).toEqual([imre]);
  });

  test("does not open under another secret", async () => {
    expect(await checkLink(await partsOf(imre), await keyFrom(`${SECRET}!`))).toBeNull();
  });

  test("keeps its garden apart from its segment when both are signed", async () => {
    const long = await partsOf({ garden: "a", role: "helper", person: "b-c", serial: 1 });
    const parts = { garden: "a-helper", segment: "b-c-1", mac: long.mac };
    expect(await checkLink(parts, key)).toBeNull();
  });

  test("is not made with a secret that could be guessed", () => {
    expect(() => keyFrom("short")).toThrow("32 characters");
  });
});

function atobUrl(text: string): string {
  return atob(text.replaceAll("-", "+").replaceAll("_", "/"));
}
