import { expect, test } from "vitest";
import { COLOURS } from "../../../../src/host/web/style/colours.ts";
import { contrast } from "./contrast.ts";

const [light = {}, dark = {}] = [...COLOURS.matchAll(/:root \{[^}]*\}/g)].map(([block]) =>
  Object.fromEntries([...block.matchAll(/--(\w+): (#\w{6})/g)].map(([, name, hex]) => [name, hex])),
);

/** Ink, the ground it stands on, and the least contrast. Source: WCAG 2.2, 1.4.6, asks 7 for text; more for the sun. */
const PAIRS = [
  ["ink", "paper", 14],
  ["ink", "wash", 12],
  ["faint", "paper", 7],
  ["faint", "wash", 6.5],
  ["link", "paper", 9],
  ["link", "wash", 8],
  ["on", "link", 9],
  ["warn", "mild", 7],
  ["warn", "paper", 7],
] as const;

test.each([
  ["light", light],
  ["dark", dark],
])("everything that is read can be read in the sun, on %s paper", (_, colours) => {
  for (const [ink, ground, least] of PAIRS)
    expect(
      contrast(colours[ink] ?? "", colours[ground] ?? ""),
      `${ink} on ${ground}`,
    ).toBeGreaterThan(least);
});

test("both lights have the same colours, and no warning is red", () => {
  expect(Object.keys(light)).toHaveLength(9);
  expect(Object.keys(dark)).toEqual(Object.keys(light));
  for (const { warn = "" } of [light, dark]) {
    const [red = 0, green = 0] = [1, 3].map((at) => Number.parseInt(warn.slice(at, at + 2), 16));
    expect(green / red).toBeGreaterThan(0.5);
  }
});
