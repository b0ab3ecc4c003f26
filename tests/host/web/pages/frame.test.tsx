import { expect, test } from "vitest";
import { type Frame, renderPage } from "../../../../src/host/web/pages/frame.tsx";

const FRAME: Frame = {
  garden: "Quarry <Lane>",
  base: "/g/l/m/",
  ways: [{ name: "Frost tonight", path: "frost" }],
};

test("a page is a whole document in its language with one heading, and fetches from here alone", () => {
  const html = renderPage({ title: "Frost", frame: FRAME, children: <p>Cold.</p> });
  expect(html).toMatch(/^<!doctype html><html lang="en">/);
  expect(html.match(/<h1>/g)).toHaveLength(1);
  expect(html).toContain('name="viewport"');
  expect(html).not.toMatch(/<script|style="| on\w+=|(?:src|href)="(?:https?:)?\/\//);
});

test("its title says which garden, and what a gardener wrote is text", () => {
  const html = renderPage({ title: "Frost", frame: FRAME, children: <p>Cold.</p> });
  expect(html).toContain("<title>Frost, Quarry &lt;Lane&gt;</title>");
  const own = renderPage({ title: "Quarry <Lane>", frame: FRAME, children: <p /> });
  expect(own).toContain("<title>Quarry &lt;Lane&gt;</title>");
});

test("the ways on stand below what the page is for, in a landmark of their own", () => {
  const html = renderPage({ title: "Room", frame: FRAME, children: <p>Free.</p> });
  expect(html.indexOf("<main>")).toBeLessThan(html.indexOf("<nav"));
  expect(html).toContain('<a href="/g/l/m/frost">Frost tonight</a>');
  expect(renderPage({ title: "Room", frame: null, children: <p /> })).not.toContain("<nav");
});

test("a script is asked for only by the page that has one", () => {
  const html = renderPage({ title: "Plan", frame: null, script: "/plan.js", children: <p /> });
  expect(html).toMatch(/<script src="\/plan\.js" defer(?:="")?><\/script>/);
});
