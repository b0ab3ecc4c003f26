import { cleanLine, cleanText } from "../calendar/clean.ts";
import { PICTURE_STYLE } from "./palette.ts";

/** Attributes of an element; numbers are written to a tenth. */
export type Attributes = Readonly<Record<string, string | number>>;

/** A number to a tenth, without trailing zeros; never `-0`. */
export function tenth(value: number): string {
  const tenths = Math.round(value * 10) || 0;
  const rest = Math.abs(tenths % 10);
  // Whole numbers become text many times faster than fractions do, and a picture has thousands of them.
  const whole = Math.abs(Math.trunc(tenths / 10));
  return `${tenths < 0 ? "-" : ""}${whole}${rest === 0 ? "" : `.${rest}`}`;
}

/** What XML 1.0 forbids beyond control characters, and what turns the direction of the text behind it. */
const UNFIT = /[\ufffe\uffff]|[\u202a-\u202e\u2066-\u2069]/g;

/** Text as it may stand in markup, lines kept: no control characters, no marks that turn its direction. Escapes nothing. */
export function plainText(text: string): string {
  return cleanText(text.replace(UNFIT, ""));
}

/** The same on one line, as a picture has it. */
export function plainLine(text: string): string {
  return cleanLine(plainText(text));
}

/** What escaping or cleaning might change; long outlines have none of it. */
const NOT_PLAIN = /[^ !#-%'-;=?-~]| {2}|^ | $/;

/** Text escaped for an element or an attribute, whatever it holds; control characters go. */
export function escapeXml(text: string): string {
  if (!NOT_PLAIN.test(text)) return text;
  return plainLine(text)
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/** One element; attribute values are escaped, `inside` is markup and stands as it is. */
export function element(
  name: string,
  attributes: Attributes,
  ...inside: readonly string[]
): string {
  const pairs = Object.entries(attributes)
    .map(
      ([key, value]) => ` ${key}="${typeof value === "number" ? tenth(value) : escapeXml(value)}"`,
    )
    .join("");
  return inside.length === 0
    ? `<${name}${pairs}/>`
    : `<${name}${pairs}>${inside.join("")}</${name}>`;
}

/** A run of words in one look; `ink` is the colour, `look` the weight or slant. */
export type TextRun = {
  readonly text: string;
  readonly ink: "ink" | "pencil";
  readonly look: "name" | "aside" | "plain";
};

/** Where a line of text stands [px]: `x` is its start, middle or end, `y` the line the letters stand on. */
export type TextSpot = {
  readonly x: number;
  readonly y: number;
  readonly sizePx: number;
  readonly from: "start" | "middle" | "end";
};

/** A line of text at its spot, in one or more runs. */
export function textLine(spot: TextSpot, ...runs: readonly TextRun[]): string {
  const place: Attributes = {
    x: spot.x,
    y: spot.y,
    "font-size": spot.sizePx,
    "text-anchor": spot.from,
  };
  const [only] = runs;
  const look = ({ ink, look }: TextRun) => (look === "plain" ? ink : `${ink} ${look}`);
  if (only && runs.length === 1)
    return element("text", { ...place, class: look(only) }, escapeXml(only.text));
  const spans = runs.map((run) => element("tspan", { class: look(run) }, escapeXml(run.text)));
  return element("text", { ...place, "xml:space": "preserve" }, spans.join("<tspan> </tspan>"));
}

/** Parts whose text lies over lines: a rim of paper round the letters keeps them apart. */
export function withHalo(...parts: readonly string[]): string {
  return element("g", { class: "over" }, ...parts);
}

/** The parts of a picture; its title and description are read out to whoever cannot see it. */
export type PictureParts = {
  readonly subject: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly title: string;
  readonly description: string;
  readonly parts: readonly string[];
  /** For a page that has a ground already; `styled` false where it has the style too. */
  readonly inset?: boolean;
  readonly styled?: boolean;
};

/** One SVG file: scales with its width, carries its own style and ground, and says in words what it shows. */
export function pictureSvg({
  subject,
  widthPx,
  heightPx,
  title,
  description,
  parts,
  inset = false,
  styled = true,
}: PictureParts): string {
  const [w, h] = [Math.ceil(widthPx), Math.ceil(heightPx)];
  const ids = { title: `${subject}-title`, desc: `${subject}-desc` };
  const head: Attributes = {
    xmlns: "http://www.w3.org/2000/svg",
    class: "sowbell-picture",
    viewBox: `0 0 ${w} ${h}`,
    role: "img",
    "aria-labelledby": `${ids.title} ${ids.desc}`,
  };
  const inside = [
    element("title", { id: ids.title }, escapeXml(title)),
    element("desc", { id: ids.desc }, escapeXml(description)),
    ...(styled ? [element("style", {}, PICTURE_STYLE)] : []),
    ...(inset ? [] : [element("rect", { class: "paper", width: w, height: h })]),
    ...parts,
  ];
  return `${element("svg", head, `\n${inside.join("\n")}\n`)}\n`;
}
