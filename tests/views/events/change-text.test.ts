import { expect, test } from "vitest";
import { changeText, goneText } from "../../../src/views/events/change-text.ts";
import { isoDay } from "../../gardens.ts";

const on = (date: string, done: unknown = null) => ({ day: isoDay(`2027-05-${date}`), done });

test("a task that moved says both days and how far they lie apart", () => {
  expect(changeText(on("02"), on("09"))).toBe("9 May, was 2 May (7 days later)");
  expect(changeText(on("03"), on("02"))).toBe("2 May, was 3 May (1 day sooner)");
});

test("one that was done or is new says so, and one that stays says nothing", () => {
  expect(changeText(on("02"), on("03", {}))).toBe("done 3 May");
  expect(changeText(undefined, on("03"))).toBe("new, 3 May");
  expect(changeText(on("03", {}), on("03", {}))).toBeNull();
});

test("one that is no more says where it was", () => {
  expect(goneText(on("03"))).toBe("no longer, was 3 May");
});
