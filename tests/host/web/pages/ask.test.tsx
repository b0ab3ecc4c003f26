import { expect, test } from "vitest";
import { AskFirst } from "../../../../src/host/web/pages/ask.tsx";

test("says what would be taken away, folded behind its own words, and needs no script", () => {
  const fold = (
    <AskFirst what="Revoke <it>">
      <button type="submit">Yes</button>
    </AskFirst>
  );
  const html = String(fold);
  expect(html).toMatch(/^<details class="ask"><summary>Revoke &lt;it&gt;<\/summary>/);
  expect(html).not.toMatch(/ open|on\w+=/);
  expect(html.indexOf("</summary>")).toBeLessThan(html.indexOf("<button"));
});
