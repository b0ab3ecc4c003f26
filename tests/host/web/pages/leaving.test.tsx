import { expect, test } from "vitest";
import { endedPage, leavingPage } from "../../../../src/host/web/pages/leaving.tsx";

const FRAME = { garden: "Quarry <Lane>", base: "/g/l/m/", ways: [] };

test("a garden is ended only by typing its name, and that it was another is said", () => {
  const html = leavingPage(FRAME, { file: "quarry-lane.zip", wrong: false });
  expect(html).toContain("Quarry &lt;Lane&gt;");
  expect(html).toContain('href="quarry-lane.zip"');
  expect(html).not.toContain("Nothing was deleted");
  expect(leavingPage(FRAME, { file: "x", wrong: true })).toContain("Nothing was deleted");
});

test("what is left to say leads nowhere", () => {
  expect(endedPage("Quarry <Lane>")).toContain("<h1>Quarry &lt;Lane&gt; is deleted</h1>");
  expect(endedPage("x")).not.toContain("<a ");
});
