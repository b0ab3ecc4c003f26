import { expect, test } from "vitest";
import { readyPage } from "../../../../src/host/web/pages/ready.tsx";

test("a garden that is ready has its owner's link, and each person's with the ways on", () => {
  const html = readyPage({
    garden: "Brook <End>",
    owner: "https://g/owner-1/x/",
    recovery: { garden: "brook", phrase: "abcd efgh" },
    links: [{ name: "Ada", address: "https://g/helper-ada-1/x/" }],
    text: "garden: <x>\n",
  });
  expect(html).toContain("<h1>Brook &lt;End&gt; is ready</h1>");
  expect(html).toContain("<code>https://g/owner-1/x/</code>");
  expect(html).toContain('href="https://g/helper-ada-1/x/calendar"');
  expect(html).not.toContain("owner-1/x/calendar");
  expect(html).toContain("abcd efgh");
  expect(html.match(/<button type="button" hidden="" data-copy=/g)).toHaveLength(2);
  expect(html.match(/<svg class="qr"/g)).toHaveLength(2);
  expect(html).toContain("garden: &lt;x&gt;");
  expect(html).toContain('<script src="/share.js" defer="">');
});
