import { expect, test } from "vitest";
import { type Frame, renderPage, withBar } from "../../../../src/host/web/pages/frame.tsx";

const FRAME: Frame = {
  garden: "Quarry <Lane>",
  base: "/g/l/m/",
  ways: [{ name: "Frost", path: "frost" }],
};

test("a page is a whole document in its language with one heading, and fetches from here alone", () => {
  const html = renderPage({ title: "Frost", frame: FRAME, children: <p>Cold.</p> });
  expect(html).toMatch(/^<!doctype html><html lang="en">/);
  expect(html.match(/<h1>/g)).toHaveLength(1);
  expect(html).toContain('name="viewport"');
  expect(html).not.toMatch(/style="| on\w+=|(?:src|href)="(?:https?:)?\/\//);
});

test("its title says which garden, and what a gardener wrote is text", () => {
  const html = renderPage({ title: "Frost", frame: FRAME, children: <p>Cold.</p> });
  expect(html).toContain("<title>Frost, Quarry &lt;Lane&gt;</title>");
  const own = renderPage({ title: "Quarry <Lane>", frame: FRAME, children: <p /> });
  expect(own).toContain("<title>Quarry &lt;Lane&gt;</title>");
});

test("the bar stands below what the page is for, in a landmark of its own, and marks where one is", () => {
  const html = renderPage({ title: "Room", frame: FRAME, children: <p>Free.</p> });
  expect(html.indexOf("<main>")).toBeLessThan(html.indexOf("<nav"));
  expect(html).toContain('<a href="/g/l/m/frost">Frost</a>');
  const frost = renderPage({ title: "Frost", frame: FRAME, place: "frost", children: <p /> });
  expect(frost).toContain('<a href="/g/l/m/frost" aria-current="true">Frost</a>');
  expect(renderPage({ title: "Room", frame: null, children: <p /> })).not.toContain("<nav");
});

test("the garden's name stands over every title but its own, and a line may stand below", () => {
  const html = renderPage({ title: "Frost", frame: FRAME, children: <p /> });
  expect(html).toContain('<header class="top"><p>Quarry &lt;Lane&gt;</p><h1>Frost</h1></header>');
  const own = { title: FRAME.garden, frame: FRAME, under: "Tuesday", children: <p /> };
  expect(renderPage(own)).toContain(
    '<header class="top own"><h1>Quarry &lt;Lane&gt;</h1><p>Tuesday</p></header>',
  );
});

test("a sheet gets the bar with its style, and is else as it was", () => {
  const sheet = "<!doctype html>\n<html><body><main>$& May</main></body></html>\n";
  const barred = withBar(sheet, FRAME);
  expect(barred).toMatch(/<style>[^<]*\.bar \{[^<]*<\/style><nav class="bar"/);
  expect(barred.replace(/<style>.*<\/nav>/s, "")).toBe(sheet);
});

test("under a link a page brings what a home screen asks for and the script that it can do without", () => {
  const html = renderPage({ title: "Frost", frame: FRAME, children: <p /> });
  expect(html).toContain('<link rel="manifest" href="/g/l/m/app.webmanifest"/>');
  expect(html).toContain('<script src="/page.js" data-base="/g/l/m/" defer');
  expect(html.match(/<meta name="theme-color"/g)).toHaveLength(2);
  const open = renderPage({ title: "Sowbell", frame: null, children: <p /> });
  expect(open).not.toMatch(/<script|manifest/);
});

test("a script is asked for only by the page that has one", () => {
  const html = renderPage({ title: "Plan", frame: null, script: "/plan.js", children: <p /> });
  expect(html).toMatch(/<script src="\/plan\.js" defer(?:="")?><\/script>/);
});
