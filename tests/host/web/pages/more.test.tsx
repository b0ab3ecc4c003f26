import { expect, test } from "vitest";
import { morePage } from "../../../../src/host/web/pages/more.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [{ name: "More", path: "more" }] };

test("leads to each place under the link, with what it is for", () => {
  const html = morePage(FRAME, [{ name: "The <plan>", path: "plan", says: "Beds & crops." }]);
  expect(html).toContain('<a href="/g/l/m/plan">The &lt;plan&gt;</a>');
  expect(html).toContain("Beds &amp; crops.");
  expect(html).toContain('<a href="/g/l/m/more" aria-current="true">More</a>');
});
