import { describe, expect, test } from "vitest";
import { frostPage, gardenPage } from "../../../../src/host/web/pages/begin-garden.tsx";
import { formWith } from "../forms.ts";

describe("the first page", () => {
  test("keeps what was typed", () => {
    const html = gardenPage({
      form: formWith(),
      errors: [],
      zones: ["UTC", "Europe/Oslo"],
      restore: "r",
    });
    expect(html).toContain('value="Brook &lt;End&gt;"');
    expect(html).toMatch(/<option value="Europe\/Oslo" selected/);
    expect(html).toMatch(/value="metric" checked/);
    expect(html).not.toContain("Choose one");
    expect(html).toContain('action="r" enctype="multipart/form-data"');
  });

  test("lets nobody go by a clock that was not chosen", () => {
    const html = gardenPage({
      form: formWith({ clock: "" }),
      errors: [],
      zones: ["UTC"],
      restore: "r",
    });
    expect(html).toMatch(/<option value="" selected[^>]*>Choose one/);
  });
});

describe("the page of frosts", () => {
  const page = (over: Partial<Parameters<typeof frostPage>[0]> = {}) =>
    frostPage({ form: formWith(), errors: [], notice: null, asks: true, ...over });

  test("asks no service but by a choice that says which, how much leaves and how often", () => {
    expect(page()).toMatch(/value="dates" checked/);
    expect(page()).toMatch(/value="place"[\s\S]*Open-Meteo once[\s\S]*tenth of a degree/);
    expect(page()).toMatch(/name="forecast" value="Open-Meteo"\/>/);
    expect(page()).toMatch(/four times a day at the most/);
  });

  test("offers none where nobody can be asked", () => {
    const html = page({ asks: false });
    expect(html).not.toMatch(/value="place"|Open-Meteo/);
  });

  test("says what was found, or why nothing was", () => {
    const found = page({ notice: { kind: "found", says: ["Last frost: usual 6 May"] } });
    expect(found).toMatch(/role="status"[\s\S]*Last frost: usual 6 May/);
    expect(page({ notice: { kind: "silent", says: "No answer." } })).toMatch(
      /role="alert"[^>]*>No answer\./,
    );
  });
});
