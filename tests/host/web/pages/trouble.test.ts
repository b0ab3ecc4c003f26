import { expect, test } from "vitest";
import { troublePage } from "../../../../src/host/web/pages/trouble.tsx";

test("an error's page says what it is and what may be done, and names no garden", () => {
  const html = troublePage(404, "Nothing here <b>.");
  expect(html).toContain("<h1>Nothing here</h1>");
  expect(html).toContain("Nothing here &lt;b&gt;.");
  expect(troublePage(404, "Nothing here. Ask.")).toContain('<p class="lead">Ask.</p>');
  expect(html).toContain("ask whoever keeps the garden for a new one");
  expect(html).not.toMatch(/<nav|manifest|<script/);
});

test("where nothing can be answered just now, calendars need nobody", () => {
  expect(troublePage(503, "Not just now.")).toContain("ask again by themselves");
  expect(troublePage(418, "A line.")).toContain("<h1>That did not work</h1>");
});
