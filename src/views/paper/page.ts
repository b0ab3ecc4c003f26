import { element, escapeXml } from "../pictures/svg.ts";
import { SHEET_STYLE } from "./style.ts";

/** Text as an element, escaped; an empty text gives nothing. */
export function textElement(name: string, look: string, text: string): string {
  return text === "" ? "" : element(name, { class: look }, escapeXml(text));
}

/** A block of markup; nothing where it would be empty. */
export function block(name: string, look: string, ...inside: readonly string[]): string {
  const all = inside.filter((each) => each !== "");
  return all.length === 0 ? "" : element(name, { class: look }, `\n${all.join("\n")}\n`);
}

/** Lines ruled to write on. `count` at least 1. */
export function ruledLines(count: number): string {
  return block("div", "ruled", ...Array.from({ length: count }, () => element("p", {}, "")));
}

/**
 * A whole page of HTML that is well-formed as XML too: one file, no script, nothing fetched, its style inside. `title`
 * is plain text, `parts` markup.
 */
export function sheetHtml(title: string, ...parts: readonly string[]): string {
  const head = [
    element("meta", { charset: "utf-8" }),
    element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
    element("meta", { name: "robots", content: "noindex" }),
    element("title", {}, escapeXml(title)),
    element("style", {}, SHEET_STYLE),
  ];
  const inside = [
    element("head", {}, `\n${head.join("\n")}\n`),
    element(
      "body",
      {},
      element("main", {}, `\n${parts.filter((part) => part !== "").join("\n")}\n`),
    ),
  ];
  return `<!doctype html>\n${element("html", { lang: "en" }, `\n${inside.join("\n")}\n`)}\n`;
}
