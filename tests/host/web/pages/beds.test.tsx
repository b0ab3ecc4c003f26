/** @jsxRuntime automatic @jsxImportSource hono/jsx */
import { expect, test } from "vitest";
import { BedsFigure, BedsToday } from "../../../../src/host/web/pages/beds.tsx";

test("the drawing stands as it is, and below it every bed in words, escaped", () => {
  const drawing = {
    svg: "<svg><title>Beds</title></svg>",
    ...{ widthPx: 358, heightPx: 100 },
    words: [{ name: "Bed <1>", text: "Beets & chard." }],
  };
  const html = String(<BedsFigure drawing={drawing} caption="The beds & all" />);
  expect(html).toContain("<svg><title>Beds</title></svg>");
  expect(html).toContain("<figcaption>The beds &amp; all</figcaption>");
  expect(html).toContain("<dt>Bed &lt;1&gt;</dt><dd>Beets &amp; chard.</dd>");
});

test("the drawing of today's jobs says which beds are in it, and how large it is", () => {
  const html = String(
    <BedsToday src="/g/l/m/beds.svg?for=jobs" names={["Root bed", "Bags"]} heightPx={380} />,
  );
  expect(html).toMatch(
    /<img src="[^"]+for=jobs" alt="[^"]*Root bed and Bags[^"]*" width="358" height="380"/,
  );
});
