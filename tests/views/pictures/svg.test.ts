import { describe, expect, test } from "vitest";
import {
  element,
  escapeXml,
  pictureSvg,
  plainLine,
  plainText,
  tenth,
  textLine,
  withHalo,
} from "../../../src/views/pictures/svg.ts";
import { parse, textIn, under } from "./xml.ts";

test("numbers are written to a tenth, without zeros that say nothing", () => {
  expect([1.04, 1.06, 12, -0.01, 2.25].map(tenth)).toEqual(["1", "1.1", "12", "0", "2.3"]);
  expect([-0.3, -12.34, -7, 0, 99.95].map(tenth)).toEqual(["-0.3", "-12.3", "-7", "0", "100"]);
});

describe("text", () => {
  test("is escaped for elements and attributes alike", () => {
    expect(escapeXml(`<b>&"`)).toBe("&lt;b&gt;&amp;&quot;");
    const tag = parse(element("a", { b: `<"&` }, escapeXml("<i>")));
    expect([tag.attributes.b, textIn(tag)]).toEqual([`<"&`, "<i>"]);
  });

  test("loses control characters, what XML forbids and what turns its direction", () => {
    expect(plainLine("a\u0000b\u0007\uffff\u202ec\nd")).toBe("abc d");
    expect(plainText("a\u0000b\u0007\uffff\u202ec\nd")).toBe("abc\nd");
  });
});

test("an outline stands as it is, and what only begins or ends with a space does not", () => {
  const outline = "M1.5 2C-3 4 5 6.7 8 9L1 2Z";
  expect(escapeXml(outline)).toBe(outline);
  expect([" a", "a ", "a  b", "a'b"].map(escapeXml)).toEqual(["a", "a", "a b", "a'b"]);
});

test("a line stands at its spot in one run or several, a space apart", () => {
  const spot = { x: 1, y: 2, sizePx: 14, from: "start" } as const;
  const name = { text: "Beets", ink: "ink", look: "name" } as const;
  const days = { text: "sown 2 May", ink: "pencil", look: "plain" } as const;
  expect(textLine(spot, name)).toBe(
    '<text x="1" y="2" font-size="14" text-anchor="start" class="ink name">Beets</text>',
  );
  expect(textIn(parse(textLine(spot, name, days)))).toBe("Beets sown 2 May");
});

test("parts over lines stand in a group of their own", () => {
  expect(withHalo("<a/>", "<b/>")).toBe('<g class="over"><a/><b/></g>');
});

test("a picture scales, is an image with title and description, and carries its style", () => {
  const svg = parse(
    pictureSvg({
      subject: "soil",
      widthPx: 389.2,
      heightPx: 700,
      title: "A & B",
      description: "Much.",
      parts: [],
    }),
  );
  expect(svg.attributes).toMatchObject({
    viewBox: "0 0 390 700",
    role: "img",
    "aria-labelledby": "soil-title soil-desc",
  });
  expect(svg.attributes.width).toBeUndefined();
  expect(under(svg, "title").map(textIn)).toEqual(["A & B"]);
  expect(under(svg, "style").length).toBe(1);
});
