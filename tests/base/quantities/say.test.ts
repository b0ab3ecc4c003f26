import { describe, expect, it } from "vitest";
import { cm, degreesC, inches, litres, quantity } from "../../../src/base/quantities/quantity.ts";
import { sayQuantity } from "../../../src/base/quantities/say.ts";

describe("a quantity as a household reads it", () => {
  it("is printed back as it was written in its own measures", () => {
    expect(sayQuantity(quantity(16, "in"), "us")).toBe("16 in");
    expect(sayQuantity(quantity(14.5, "in"), "us")).toBe("14.5 in");
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
    ).toEqual(["0.25 in", "1.5 in", "7 in", "3.5 ft"]);
    expect([cm(0.6), cm(12.4), cm(83), cm(366)].map((q) => sayQuantity(q, "metric"))).toEqual([
      "0.5 cm",
      "12 cm",
      "85 cm",
      "3.7 m",
    ]);
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
