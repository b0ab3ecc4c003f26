import { expect, test } from "vitest";
import { Phrase, recoveredPage, recoveryPage } from "../../../../src/host/web/pages/recovery.tsx";

test("the page that takes a phrase has a label for each field, and says that one was wrong", () => {
  for (const wrong of [false, true]) {
    const html = recoveryPage(wrong);
    for (const id of ["garden", "phrase"]) expect(html).toContain(`<label for="${id}">`);
    expect(html.includes("opens nothing")).toBe(wrong);
  }
});

test("a phrase is shown with the garden it goes with, and with the link it has led to", () => {
  const shown = { garden: "lane<x>", phrase: "abcd efgh" };
  expect(`${<Phrase {...shown} />}`).toMatch(/lane&lt;x&gt;[\s\S]*abcd efgh/);
  const html = recoveredPage({ ...shown, address: "https://a.example/lane/" });
  expect(html).toContain('<a class="do" href="https://a.example/lane/">');
  expect(html).toContain("abcd efgh");
});
