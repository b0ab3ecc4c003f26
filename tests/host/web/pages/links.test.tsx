import { expect, test } from "vitest";
import { linkPage, linksPage } from "../../../../src/host/web/pages/links.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };
const NONE = { rows: [], strays: [], others: false, recovery: null, revoked: [], done: null };

test("each link is shown or revoked by a form of its own, named for whom it is", () => {
  const rows = [{ name: "Imre <x>", segment: "helper-imre-1", used: true }];
  const html = linksPage(FRAME, { ...NONE, rows });
  expect(html).toContain('<input type="hidden" name="link" value="helper-imre-1"/>');
  expect(html).toMatch(
    /<details class="ask"><summary>Revoke it.*<button type="submit" class="end" name="do" value="revoke">Yes/,
  );
  expect(html).toContain("Imre &lt;x&gt;");
  expect(html).toContain("A calendar uses it.");
});

test("whose link it is stands one level below the page's parts", () => {
  const rows = [{ name: "Imre", segment: "helper-imre-1", used: false }];
  const html = linksPage(FRAME, { ...NONE, rows });
  expect(html.indexOf("<h2>")).toBeLessThan(html.indexOf("<h3>Imre</h3>"));
});

test("no link's address stands on the page of links", () => {
  const rows = [{ name: "Imre", segment: "helper-imre-1", used: false }];
  expect(linksPage(FRAME, { ...NONE, rows })).not.toMatch(/https?:|\.ics|helper-imre-1\//);
});

test("every other link of an owner can be closed where there may be one, and what was just revoked is said", () => {
  expect(linksPage(FRAME, NONE)).not.toContain('value="close"');
  expect(linksPage(FRAME, { ...NONE, others: true })).toContain('value="close"');
  expect(linksPage(FRAME, { ...NONE, done: "reader-1" })).toContain("reader-1 is revoked.");
});

test("strays and what was revoked are mentioned where there are any", () => {
  expect(linksPage(FRAME, NONE)).not.toMatch(/nobody in the plan|<h2>Revoked/);
  const strays = [{ name: "helper-cy-1", segment: "helper-cy-1", used: true }];
  const revoked = [{ segment: "reader-1", day: "8 May 2027" }];
  const html = linksPage(FRAME, { ...NONE, strays, revoked });
  expect(html).toContain("Of nobody in the plan");
  expect(html).not.toContain('value="show"');
  expect(html).toMatch(/reader-1, 8 May 2027/);
});

test("one link is text and a code; an owner's has no calendar", () => {
  const address = "https://garden.example/g/helper-imre-1/m/";
  const html = linkPage(FRAME, {
    name: "The link of Imre",
    address,
    feed: `${address}sessions.ics`,
  });
  expect(html).toContain(`<code>${address}</code>`);
  expect(html).toContain('<svg class="qr"');
  expect(html).toContain("sessions.ics");
  expect(linkPage(null, { name: "Yours", address, feed: null })).not.toContain(".ics");
});
