import { expect, test } from "vitest";
import { regionOf } from "../../../src/engine/rules/regions.ts";

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
