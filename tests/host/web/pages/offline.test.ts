import { expect, test } from "vitest";
import { offlinePage } from "../../../../src/host/web/pages/offline.tsx";

test("a page without network says that nothing was sent, and leads to the week that was kept", () => {
  const html = offlinePage({ garden: "Quarry Lane", base: "/g/l/m/", ways: [] });
  expect(html).toContain("<h1>No network</h1>");
  expect(html).toContain("nothing was sent");
  expect(html).toContain('<a href="/g/l/m/">The last week you looked at</a>');
});
