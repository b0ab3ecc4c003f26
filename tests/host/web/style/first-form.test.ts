import { expect, test } from "vitest";
import { BED_KINDS } from "../../../../src/garden/model/first-answers.ts";
import { FROST_WAYS } from "../../../../src/host/web/first-form.ts";
import { FIRST_FORM_STYLE } from "../../../../src/host/web/style/first-form.ts";

test("what a choice does not ask for is out of sight, for each way to tell of frosts", () => {
  for (const way of FROST_WAYS)
    expect(FIRST_FORM_STYLE).toMatch(
      new RegExp(`:has\\(\\[name="way"\\]\\[value="${way}"\\]:checked\\) \\.when.*display: none`),
    );
});

test("bags and pots have a number, everything else its sides", () => {
  const many = BED_KINDS.filter((kind) => FIRST_FORM_STYLE.includes(`[value="${kind}"]`));
  expect(many).toEqual(["bags", "pots"]);
});

test("a colour is one of the pages' own", () => {
  expect(FIRST_FORM_STYLE).not.toMatch(/#[0-9a-f]{3,6}|rgb/i);
});
