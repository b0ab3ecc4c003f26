import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { boxesOut } from "../../../src/engine/growth/winter-sown.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "./growing.ts";

const sown = (name: string, given: Given = {}) =>
  boxesOut(
    growingOf(QUARRY, name, { ...given, planting: { start: "winter-sown", ...given.planting } }),
  );

describe("boxes of winter-sown seed go out", () => {
  test("nine weeks before the usual last frost with what stands frost, six with what does not", () => {
    const days = ["lettuce", "tomato"].map((name) =>
      isoOf(sown(name)?.day ?? isoDay("2000-01-01")),
    );
    expect(days).toEqual(["2027-03-04", "2027-03-25"]);
    expect(sown("lettuce")?.basis).toEqual(["last frost"]);
  });

  test("on the gardener's own day where there is one", () => {
    const fixed = { start: isoDay("2027-02-20"), out: null };
    expect(sown("lettuce", { planting: { fixed } })).toMatchObject({
      day: isoDay("2027-02-20"),
      basis: ["given"],
    });
  });

  test("never for another start, nor where no frost is known", () => {
    const { site } = growingOf(QUARRY, "lettuce").plan;
    expect(sown("lettuce", { planting: { start: "plants" } })).toBeNull();
    expect(sown("lettuce", { plan: { site: { ...site, lastFrost: null } } })).toBeNull();
  });
});
