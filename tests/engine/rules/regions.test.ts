import { expect, test } from "vitest";
import type { Region } from "../../../src/crops/facts.ts";
import { coversIn, regionOf } from "../../../src/engine/rules/regions.ts";
import { ours } from "../../sources/ours.ts";

test("a net against the carrot fly is laid where the fly is common, and one against leaf miners everywhere", () => {
  const laid = (key: string, region: Region) =>
    coversIn(region, ours(key)).map(({ against }) => against);
  expect(laid("carrot", "british isles")).toEqual(["carrot fly"]);
  expect(laid("carrot", "north america")).toEqual([]);
  expect(laid("beet", "north america")).toEqual(laid("beet", "british isles"));
});

test.each([
  ["America/Denver", "north america"],
  ["America/Anchorage", "alaska"],
  ["US/Alaska", "alaska"],
  ["America/Whitehorse", "north america"],
  ["America/Santiago", "elsewhere"],
  ["America/Lima", "elsewhere"],
  ["America/Argentina/Salta", "elsewhere"],
  ["America/Mexico_City", "north america"],
  ["Europe/Dublin", "british isles"],
  ["Europe/Rome", "mainland europe"],
  ["Europe/Oslo", "nordic countries"],
  ["Australia/Hobart", "australia"],
  ["Pacific/Auckland", "new zealand"],
  ["Asia/Tokyo", "elsewhere"],
  ["Etc/UTC", "elsewhere"],
])("a garden of %s lies in %s", (clock, region) => {
  expect(regionOf({ clock })).toBe(region);
});
