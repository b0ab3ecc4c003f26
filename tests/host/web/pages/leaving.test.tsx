import { expect, test } from "vitest";
import { endedPage, leavingPage } from "../../../../src/host/web/pages/leaving.tsx";

const PROPS = { file: "quarry-lane.zip", wrong: false, restored: false, notRestored: [] };
const FRAME = { garden: "Quarry <Lane>", base: "/g/l/m/", ways: [] };

test("a garden is ended only by typing its name, and that it was another is said", () => {
  const html = leavingPage(FRAME, PROPS);
  expect(html).toContain("Quarry &lt;Lane&gt;");
  expect(html).toContain('href="quarry-lane.zip"');
  expect(html).not.toContain("Nothing was deleted");
  expect(leavingPage(FRAME, { ...PROPS, wrong: true })).toContain("Nothing was deleted");
});

test("an archive goes in the garden's place only by its name, and why it did not is said line by line", () => {
  const html = leavingPage(FRAME, { ...PROPS, notRestored: ["garden.json: <diary> 3"] });
  expect(html).toContain('action="/g/l/m/restore" enctype="multipart/form-data"');
  expect(html).toContain("<li>garden.json: &lt;diary&gt; 3</li>");
  expect(html).not.toContain("is as its archive has it");
  expect(leavingPage(FRAME, { ...PROPS, restored: true })).toContain("is as its archive has it");
});

test("what is left to say leads nowhere", () => {
  expect(endedPage("Quarry <Lane>")).toContain("<h1>Quarry &lt;Lane&gt; is deleted</h1>");
  expect(endedPage("x")).not.toContain("<a ");
});
