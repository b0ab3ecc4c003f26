import { expect, test } from "vitest";
import { notRestoredPage } from "../../../../src/host/web/pages/restoring.tsx";

test("why an archive made no garden is said, a line each, and that nothing was stored", () => {
  const html = notRestoredPage(["garden.json: diary 2 <day>: no such day."]);
  expect(html).toContain("<li>garden.json: diary 2 &lt;day&gt;: no such day.</li>");
  expect(html).toContain("Nothing was stored.");
});
