import { describe, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import {
  checkForm,
  firstWrongBefore,
  wrongOn,
  yearsAt,
} from "../../../src/host/web/begin-check.ts";
import type { LinkRequest } from "../../../src/host/web/garden-request.ts";
import { formWith } from "./forms.ts";

const NOW = Date.UTC(2026, 11, 1);
const linkRequest = {
  context: { engine: async () => engine, now: () => NOW },
  link: { garden: "g" },
} as unknown as LinkRequest;

const check = (over: Readonly<Record<string, string>> = {}) =>
  checkForm(linkRequest, formWith(over), false);

test("the year that one plans for in autumn is the next, and old ones are not taken", () => {
  expect(yearsAt(NOW)).toEqual({ next: 2027, from: 2025, to: 2027 });
  expect(yearsAt(Date.UTC(2027, 2, 1))).toEqual({ next: 2027, from: 2026, to: 2028 });
});

describe("a form that is checked", () => {
  test("has its plan's text and its frosts in words where nothing is wrong", async () => {
    const { wrong, plan, text, frosts } = await check();
    expect(wrong).toEqual([]);
    expect(plan?.year).toBe(2027);
    expect(text).toContain("tomato: 6 plants, bought");
    expect(frosts[0]).toContain("usual 20 May");
  });

  test("tells of frost dates where what they come from was asked", async () => {
    const none = { lastFrost: "", firstFrost: "" };
    expect((await check(none)).wrong.map(({ field }) => field)).toEqual([
      "lastFrost",
      "firstFrost",
    ]);
    const numbers = await check({ ...none, way: "numbers", hottest: "28" });
    expect(numbers.wrong.map(({ field }) => field)).toEqual(["coldest"]);
    expect((await check({ ...none, way: "numbers", hottest: "" })).wrong).toHaveLength(1);
  });

  test("guesses frosts by both temperatures, and the plan says so", async () => {
    const { wrong, text } = await check({ way: "numbers", hottest: "22", coldest: "-7" });
    expect(wrong).toEqual([]);
    expect(text).toMatch(/last frost: .* # guessed/);
    expect(text).not.toContain("about 20 May");
  });

  test("needs a crop", async () => {
    const form = formWith();
    const bare = { ...form, answers: { ...form.answers, crops: [] } };
    const { wrong } = await checkForm(linkRequest, bare, false);
    expect(wrong).toEqual([{ field: "crop", says: "Tick one crop at least." }]);
  });
});

test("goes back to the first page with something wrong on it, and tells there what is wrong there", async () => {
  const { wrong } = await check({ lastFrost: "mid May", "beds.1.count": "some" });
  expect(firstWrongBefore("look", wrong)).toBe("frost");
  expect(firstWrongBefore("frost", wrong)).toBeNull();
  expect(wrongOn("frost", wrong)).toEqual([
    { field: "lastFrost", says: "mid May is not a day. Write a day such as 6 May." },
  ]);
  expect(wrongOn("beds", wrong).map(({ field }) => field)).toContain("beds.1.count");
});
