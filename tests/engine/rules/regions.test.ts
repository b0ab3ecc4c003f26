import { expect, test } from "vitest";
import { regionOf } from "../../../src/engine/rules/regions.ts";

test.each([
  ["America/Denver", 46.6, "north america"],
  ["America/Anchorage", null, "north america"],
  ["America/Santiago", -33.4, "elsewhere"],
  ["America/Lima", -12, "elsewhere"],
  ["Europe/Dublin", 52.3, "british isles"],
  ["Europe/Rome", 41.9, "mainland europe"],
  ["Europe/Oslo", 59.9, "nordic countries"],
  ["Australia/Hobart", -42.9, "australia"],
  ["Pacific/Auckland", -36.8, "new zealand"],
  ["Asia/Tokyo", 35.7, "elsewhere"],
  ["Etc/UTC", null, "elsewhere"],
])("a garden of %s at %s lies in %s", (clock, latitude, region) => {
  expect(regionOf({ clock, latitude })).toBe(region);
});
