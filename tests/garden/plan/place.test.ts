import { describe, expect, it } from "vitest";
import { least, PLAN, planOf, read, told } from "./canonical.ts";

const FROSTS = "last frost: 6 May\n  first frost: 2 Oct";
const site = (more: string) => planOf(least("", `${FROSTS}\n  ${more}`)).site;
const wrong = (more: string) => told(least("", `${FROSTS}\n  ${more}`));

describe("a place", () => {
  it("has a clock, a latitude and its own correction, which is a difference", () => {
    expect(PLAN.site).toMatchObject({
      clock: "America/Denver",
      latitude: 46.6,
      colderBy: { kind: "difference", said: { value: 3, unit: "°F" } },
    });
    expect(PLAN.site.colderBy?.si).toBeCloseTo(1.667, 3);
  });

  it("offers the nearest zone, by its city too", () => {
    const clock = (zone: string) =>
      read(least("").replace("America/Denver", zone)).problems[0]?.shouldBe;
    expect(clock("America/Denvr")).toBe("Did you mean America/Denver");
    expect(clock("Denver")).toBe("Did you mean America/Denver");
    expect(clock("New York")).toBe("Did you mean America/New_York");
    expect(clock("my kitchen clock")).toBe("Write one such as America/Denver or Europe/Paris");
  });

  it("may have a greenhouse with trays and warmth, or without warmth", () => {
    expect(site("greenhouse: 20 trays, kept above 45 °F").greenhouse).toMatchObject({
      trays: 20,
      keptAbove: { kind: "temperature", si: 65 / 9 },
    });
    expect(site("greenhouse: 12 trays").greenhouse).toMatchObject({ trays: 12, keptAbove: null });
    expect(wrong("greenhouse: 20 trays, kept above 45")).toEqual(["quantity-unclear@7:25"]);
    expect(wrong("greenhouse: big")).toEqual(["unknown-word@7:15"]);
  });

  it("refuses a correction that is no difference", () => {
    for (const text of ["3", "3 in", "cold"])
      expect(wrong(`colder than the forecast by: ${text}`)).toEqual(["quantity-unclear@7:32"]);
  });

  it("reports a latitude that is not on earth and nothing of frost dates besides", () => {
    expect(wrong("latitude: -91")).toEqual(["out-of-range@7:3"]);
  });

  it("lists a missing latitude as filled in", () => {
    expect(site("latitude: 0").latitude).toBe(0);
    expect(site("# no latitude").latitude).toBeNull();
    expect(planOf(least("", `${FROSTS}\n  latitude:`)).filled.map(({ what }) => what)).toContain(
      "latitude",
    );
    expect(planOf(least("")).filled.map(({ what }) => what)).toContain("latitude");
  });
});

describe("risk", () => {
  const risk = (line: string) =>
    planOf(`${least("")}risk:\n  plants we raised: ${line}`).risk.raised;

  it("is 1 spring in 10 and 1 in 2 where the plan does not say", () => {
    expect(planOf(least("")).risk).toEqual({ raised: 0.1, seed: 0.5 });
  });

  it("is read as odds or as a share", () => {
    expect(risk("1 spring in 5")).toBe(0.2);
    expect(risk("3 in 10")).toBe(0.3);
    expect(risk("25 %")).toBe(0.25);
  });

  it("is more than never and less than always", () => {
    const codes = (line: string) =>
      told(`${least("")}risk:\n  seed in the ground: ${line}`).map((code) => code.split("@")[0]);
    expect(codes("0 springs in 10")).toEqual(["out-of-range"]);
    expect(codes("2 springs in 2")).toEqual(["out-of-range"]);
    expect(codes("1 spring in 0")).toEqual(["out-of-range"]);
    expect(codes("now and then")).toEqual(["unknown-word"]);
  });
});
