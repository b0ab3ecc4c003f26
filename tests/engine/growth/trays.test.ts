import { describe, expect, test } from "vitest";
import { fullestDay, traysOn } from "../../../src/engine/growth/trays.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "./growing.ts";

const TEXT = QUARRY.replace("tomato: 6 plants", "tomato: 20 plants");
const ACTS = { start: "2027-04-09", up: "2027-04-16", "set out": "2027-05-21" };
const tomatoes = (given: Given = {}) => growingOf(TEXT, "tomato", { acts: ACTS, ...given });
const NONE = { cells: 0, pots: 0 };

describe("trays under cover", () => {
  const on = (iso: string) => traysOn(tomatoes(), isoDay(iso));

  test("are none before sowing, and none from the day of setting out", () => {
    expect(on("2027-04-08")).toEqual(NONE);
    expect(on("2027-05-21")).toEqual(NONE);
  });

  test("are one of cells, then two of pots for twenty tomatoes", () => {
    expect(on("2027-04-09")).toEqual({ cells: 1, pots: 0 });
    expect(on("2027-05-03")).toEqual({ cells: 1, pots: 0 });
    expect(on("2027-05-04")).toEqual({ cells: 0, pots: 2 });
    expect(on("2027-05-20")).toEqual({ cells: 0, pots: 2 });
  });

  test("stay cells for what is never potted on", () => {
    const [crop] = [tomatoes().crop];
    const indoors = crop.indoors && { ...crop.indoors, potOnDaysAfterUp: null };
    const late = traysOn(tomatoes({ crop: { indoors } }), isoDay("2027-05-20"));
    expect(late).toEqual({ cells: 1, pots: 0 });
  });

  test("are none of plants that are bought", () => {
    const bought = tomatoes({ planting: { start: "plants" } });
    expect(traysOn(bought, isoDay("2027-05-04"))).toEqual(NONE);
  });
});

describe("the fullest day", () => {
  test("is the first with most trays", () => {
    expect(fullestDay([tomatoes()])).toEqual({ day: isoDay("2027-05-04"), trays: 2 });
  });

  test("adds up what stands there together", () => {
    const early = tomatoes({ acts: { ...ACTS, start: "2027-03-01", up: "2027-03-08" } });
    const full = fullestDay([tomatoes(), early]);
    expect(full).toEqual({ day: isoDay("2027-05-04"), trays: 4 });
  });

  test("is none where nothing is raised", () => {
    expect(fullestDay([])).toBeNull();
    expect(fullestDay([growingOf(TEXT, "beet", { acts: { start: "2027-05-03" } })])).toBeNull();
  });
});
