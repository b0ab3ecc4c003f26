import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  decodePathPart,
  encodePathPart,
  readSegment,
  writeSegment,
} from "../../../src/host/links/segment.ts";

describe("a name as one part of a path", () => {
  test.each([
    ["quarry-lane", "quarry-lane"],
    ["zoë", "zo~eb~"],
    ["a b/c", "a~20~b~2f~c"],
    ["~", "~7e~"],
    ["..", "~2e~~2e~"],
    ["🥕", "~1f955~"],
  ])("writes %s as %s", (name, part) => {
    expect(encodePathPart(name)).toBe(part);
    expect(decodePathPart(part)).toBe(name);
  });

  test("comes back whatever the name, and needs no escaping in a URL", () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, unit: "grapheme" }), (name) => {
        const part = encodePathPart(name);
        expect(decodePathPart(part)).toBe(name);
        expect(new URL(`https://garden.example/x${part}`).pathname).toBe(`/x${part}`);
      }),
    );
  });

  test.each([
    ["nothing", ""],
    ["a percent sign", "zo%C3%AB"],
    ["a letter spelt as a code", "~61~"],
    ["a code with a leading zero", "~0eb~"],
    ["a code in capitals", "~EB~"],
    ["a code past the last character", "~110000~"],
    ["a raw letter outside ASCII", "zoë"],
  ])("has one spelling: %s is none", (_, part) => {
    expect(decodePathPart(part)).toBeNull();
  });
});

describe("a link's part of the path", () => {
  test.each([
    ["owner-1", { role: "owner", person: null, serial: 1 }],
    ["helper-imre-1", { role: "helper", person: "imre", serial: 1 }],
    ["helper-anna-maria-12", { role: "helper", person: "anna-maria", serial: 12 }],
    ["helper-1-2", { role: "helper", person: "1", serial: 2 }],
    ["helper-zo~eb~-1", { role: "helper", person: "zoë", serial: 1 }],
    ["reader-3", { role: "reader", person: null, serial: 3 }],
    ["helper-1", { role: "helper", person: null, serial: 1 }],
    ["helper-1-1", { role: "helper", person: "1", serial: 1 }],
    ["invitation-1", { role: "invitation", person: null, serial: 1 }],
    ["admin-1", { role: "admin", person: null, serial: 1 }],
  ] as const)("reads %s both ways", (segment, said) => {
    expect(readSegment("quarry-lane", segment)).toEqual({ garden: "quarry-lane", ...said });
    expect(writeSegment(said)).toBe(segment);
  });

  test.each([
    "owner",
    "owner-0",
    "owner-01",
    "owner-imre-1",
    "reader-imre-1",
    "helper--1",
    "Owner-1",
    "keeper-1",
    "helper-zoë-1",
    "owner-1 ",
  ])("takes %s for no link", (segment) => {
    expect(readSegment("quarry-lane", segment)).toBeNull();
  });
});
