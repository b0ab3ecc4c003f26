import { describe, expect, it } from "vitest";
import { cm, degreesC, inches, litres, quantity } from "../../../src/base/quantities/quantity.ts";
import { quantityFrom } from "../../../src/base/quantities/read.ts";
import { sayQuantity } from "../../../src/base/quantities/say.ts";

describe("a quantity as a household reads it", () => {
  it("is printed back as it was written in its own measures", () => {
    expect(sayQuantity(quantity(16, "in"), "us")).toBe("16 in");
    expect(sayQuantity(quantity(14.5, "in"), "us")).toBe("14½ in");
    expect(sayQuantity(quantity(37, "cm"), "metric")).toBe("37 cm");
    expect(sayQuantity(quantity(58, "°F"), "us")).toBe("58 °F");
  });

  it("is turned into the other measures, rounded as a gardener would", () => {
    expect(sayQuantity(quantity(16, "in"), "metric")).toBe("40 cm");
    expect(sayQuantity(quantity(3.6, "m"), "us")).toBe("12 ft");
    expect(sayQuantity(quantity(50, "°F"), "metric")).toBe("10 °C");
  });

  it("has halves and quarters of small inches and whole ones from four on", () => {
    expect(
      [inches(0.25), inches(1.5), inches(7.2), inches(40)].map((q) => sayQuantity(q, "us")),
    ).toEqual(["¼ in", "1½ in", "7 in", "3½ ft"]);
    expect([cm(0.6), cm(12.4), cm(83), cm(366)].map((q) => sayQuantity(q, "metric"))).toEqual([
      "5 mm",
      "12 cm",
      "85 cm",
      "3.7 m",
    ]);
  });

  it("says parts of inches and feet with their own signs, and parts of a degree or a metre with digits", () => {
    const said = (value: number, unit: "in" | "ft" | "gal" | "°F") =>
      sayQuantity(quantity(value, unit), "us");
    expect([0.125, 0.25, 1 / 3, 0.33, 0.5, 2 / 3, 0.75, 2.25].map((it) => said(it, "in"))).toEqual([
      "⅛ in",
      "¼ in",
      "⅓ in",
      "⅓ in",
      "½ in",
      "⅔ in",
      "¾ in",
      "2¼ in",
    ]);
    expect([said(-0.5, "in"), said(2.5, "gal"), said(3.7, "ft"), said(57.5, "°F")]).toEqual([
      "-½ in",
      "2½ gal",
      "3.7 ft",
      "57.5 °F",
    ]);
    expect(sayQuantity(quantity(1.5, "m"), "metric")).toBe("1.5 m");
  });

  it("reads back each fraction that it says", () => {
    for (const value of [0.125, 0.25, 1 / 3, 0.5, 2 / 3, 0.75, 1.5]) {
      const text = sayQuantity(quantity(value, "in"), "us");
      expect(quantityFrom(text)?.si).toBeCloseTo(value * 2.54, 6);
    }
  });

  it("says volumes in quarts, gallons or litres", () => {
    expect([litres(1), litres(7.6), litres(57)].map((q) => sayQuantity(q, "us"))).toEqual([
      "1 qt",
      "2 gal",
      "15 gal",
    ]);
    expect([litres(7.6), litres(57)].map((q) => sayQuantity(q, "metric"))).toEqual(["8 L", "55 L"]);
  });

  it("says a difference as a difference", () => {
    expect(sayQuantity({ kind: "difference", si: 5, said: null }, "us")).toBe("9 °F");
    expect(sayQuantity({ kind: "difference", si: 5, said: null }, "metric")).toBe("5 °C");
    expect(sayQuantity(degreesC(10), "us")).toBe("50 °F");
  });

  it("says areas", () => {
    expect(sayQuantity(quantity(4.46, "m²"), "us")).toBe("48 ft²");
    expect(sayQuantity(quantity(48, "ft²"), "metric")).toBe("4.5 m²");
  });
});
