import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cleanLine, cleanLink, cleanText, shortenLine } from "../../../src/views/calendar/clean.ts";
import { hostileText } from "./events.ts";

describe("cleaning text", () => {
  test("plain text comes back as it is", () => {
    expect(cleanText("Thin beets, to 3 in; then\nwater")).toBe("Thin beets, to 3 in; then\nwater");
    expect(cleanText("")).toBe("");
  });

  test("every kind of line end becomes a line feed", () => {
    expect(cleanText("a\r\nb\rc\u2028d\u2029e\u0085f\vg\fh")).toBe("a\nb\nc\nd\ne\nf\ng\nh");
  });

  test("control characters go, a tab becomes a space, half a character is marked", () => {
    expect(cleanText("a\u0000b\u001bc\u007fd\u009fe")).toBe("abcde");
    expect(cleanText("\ufeffab")).toBe("ab");
    expect(cleanText("a\tb")).toBe("a b");
    expect(cleanText("a\ud800b\udc00")).toBe("a\ufffdb\ufffd");
  });

  test("other scripts and joined emoji stay", () => {
    const text = "\u05d2\u05d9\u05e0\u05d4 \u{1f468}\u200d\u{1f469}\u200d\u{1f467} R\u00fcben";
    expect(cleanText(text)).toBe(text);
  });

  test("cleaning twice changes nothing, and what is left is well-formed and without controls", () => {
    fc.assert(
      fc.property(hostileText, (text) => {
        const clean = cleanText(text);
        expect(cleanText(clean)).toBe(clean);
        expect(/(?!\n)\p{Cc}|[\p{Cs}\p{Zl}\p{Zp}]/u.test(clean)).toBe(false);
      }),
    );
  });
});

describe("cleaning a line", () => {
  test("line ends and runs of spaces become one space, none at the ends", () => {
    expect(cleanLine("  Thin \r\n\n beets\u2028now ")).toBe("Thin beets now");
  });

  test("a line that is already clean comes back as it is", () => {
    expect(cleanLine("Thin beets")).toBe("Thin beets");
  });

  test("nothing but controls leaves nothing", () => {
    expect(cleanLine("\u0000\r\n\u0007")).toBe("");
  });
});

describe("shortening a line", () => {
  test("one that fits stays", () => {
    expect(shortenLine("x".repeat(60), 60)).toBe("x".repeat(60));
    expect(shortenLine("\u{1f955}".repeat(60), 60)).toBe("\u{1f955}".repeat(60));
  });

  test("a longer one is cut and marked", () => {
    expect(shortenLine("Thin the beets in the root bed", 10)).toBe("Thin the\u2026");
  });

  test("a family of joined emoji is never torn", () => {
    const family = "\u{1f468}\u200d\u{1f469}\u200d\u{1f467}";
    expect(shortenLine(family.repeat(3), 12)).toBe(`${family.repeat(2)}\u2026`);
  });

  test("it never has more code points than allowed", () => {
    fc.assert(
      fc.property(hostileText, (text) => {
        expect([...shortenLine(cleanLine(text), 60)].length).toBeLessThanOrEqual(60);
      }),
    );
  });
});

describe("cleaning a link", () => {
  test("a link stays as it is, commas and percent signs included", () => {
    const link = "https://sowbell.example/a,b;c/2027%2Fbeet?x=1&y=(2)#z";
    expect(cleanLink(link)).toBe(link);
  });

  test("what may not stand in a URI is encoded", () => {
    expect(cleanLink("https://a.example/r\u00fcben bed\r\nX:1\ud800")).toBe(
      "https://a.example/r%C3%BCben%20bed%0D%0AX:1%EF%BF%BD",
    );
  });

  test("a host in brackets stays, and a percent sign that encodes nothing is encoded", () => {
    expect(cleanLink("http://[::1]:8787/50%/a%2fb")).toBe("http://[::1]:8787/50%25/a%2fb");
    expect(cleanLink("https://a.example/\u212a\u017f")).toBe("https://a.example/%E2%84%AA%C5%BF");
  });

  test("what has no scheme throws", () => {
    expect(() => cleanLink("a.example/x")).toThrow(RangeError);
    expect(() => cleanLink("https:")).toThrow(RangeError);
  });
});
