import { describe, expect, it } from "vitest";
import { numberFrom, quantityFrom, temperatureFrom } from "../../../src/base/quantities/read.ts";

describe("numbers in words", () => {
  it("are whole, with point or comma, or fractions", () => {
    expect(["12", "-3", "0.5", "0,5", "1/2", "2 1/2", "½", "2½", "2 ½"].map(numberFrom)).toEqual([
      12, -3, 0.5, 0.5, 0.5, 2.5, 0.5, 2.5, 2.5,
    ]);
  });

  it("are null for anything else", () => {
    for (const text of ["", "-", "one", "1.2.3", "1/0", "1e3", "--1", "1 2"])
      expect(numberFrom(text), text).toBeNull();
  });
});

describe("amounts in words", () => {
  it("have a number and a unit, close together or apart", () => {
    for (const text of ["16 in", "16in", '16"', "16 inches", "16 in."])
      expect(quantityFrom(text), text).toMatchObject({ kind: "length", si: 40.64 });
    expect(quantityFrom("45 °F")).toMatchObject({ kind: "temperature" });
    expect(quantityFrom("-3C")).toMatchObject({ si: -3 });
    expect(quantityFrom("2 1/2 ft")?.si).toBeCloseTo(76.2, 6);
  });

  it("are differences where a difference is asked for", () => {
    expect(quantityFrom("9 °F", true)).toMatchObject({ kind: "difference", si: 5 });
  });

  it("are null without number or unit, or with one that is not known", () => {
    for (const text of ["16", "in", "16 cubits", "", "sixteen in", "16 in in"])
      expect(quantityFrom(text), text).toBeNull();
  });
});

describe("a temperature as one says it", () => {
  it("is in the household's unit where it names none", () => {
    expect(temperatureFrom("29", "us")?.si).toBeCloseTo(-1.67, 2);
    expect(temperatureFrom("−2", "metric")).toMatchObject({ kind: "temperature", si: -2 });
    expect(temperatureFrom("28.4 °F", "metric")?.si).toBeCloseTo(-2, 6);
  });

  it("is null for anything else", () => {
    for (const text of ["", "cold", "3 in", "9 l"]) expect(temperatureFrom(text, "us")).toBeNull();
  });
});
