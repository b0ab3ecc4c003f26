import { describe, expect, it } from "vitest";
import {
  celsius,
  cm,
  degreesC,
  fahrenheit,
  inches,
  litres,
  quantity,
  unitFrom,
} from "../../../src/base/quantities/quantity.ts";

describe("quantities", () => {
  it("are stored in centimetres, square metres, litres and degrees Celsius", () => {
    expect(quantity(10, "ft")).toMatchObject({ kind: "length", si: 304.8 });
    expect(quantity(10, "ft²").si).toBeCloseTo(0.929, 3);
    expect(quantity(10, "gal")).toMatchObject({ kind: "volume" });
    expect(quantity(10, "gal").si).toBeCloseTo(37.854, 3);
    expect(quantity(50, "°F")).toMatchObject({ kind: "temperature", si: 10 });
  });

  it("keep a difference of temperatures apart from a temperature", () => {
    expect(quantity(9, "°F", true)).toMatchObject({ kind: "difference", si: 5 });
    expect(quantity(5, "°C", true)).toMatchObject({ kind: "difference", si: 5 });
    expect(quantity(10, "ft", true).kind).toBe("length");
  });

  it("remember how they were written, or that nobody wrote them", () => {
    expect(quantity(16, "in").said).toEqual({ value: 16, unit: "in" });
    expect([cm(3), inches(2), litres(5), degreesC(7)].map(({ si, said }) => [si, said])).toEqual([
      [3, null],
      [5.08, null],
      [5, null],
      [7, null],
    ]);
  });

  it("know units in every spelling", () => {
    const means = {
      inches: "in",
      '"': "in",
      "'": "ft",
      Feet: "ft",
      litres: "L",
      "sq  ft": "ft²",
      "°f": "°F",
      C: "°C",
    };
    for (const [spelling, unit] of Object.entries(means)) expect(unitFrom(spelling)).toBe(unit);
    expect(unitFrom("cubits")).toBeNull();
  });

  it("turn degrees both ways", () => {
    expect([celsius(32), celsius(-40), fahrenheit(100)]).toEqual([0, -40, 212]);
  });
});
