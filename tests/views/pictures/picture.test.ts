import { describe, expect, test } from "vitest";
import { allFree, clash, inside } from "../../../src/views/pictures/labels.ts";
import { drawPicture } from "../../../src/views/pictures/picture.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import type { PictureForm, PictureSubject } from "../../../src/views/pictures/sketch.ts";
import { QUARRY } from "../../gardens.ts";
import { once } from "../../once.ts";
import { GARDENS, labelsOf, read, sketchOf, viewOf } from "./drawn.ts";
import { byId, everyTag, parse, textIn, under } from "./xml.ts";

const SUBJECTS: readonly PictureSubject[] = ["frost", "soil", "season", "weather"];
const FORMS: readonly PictureForm[] = ["phone", "page"];
const ALL = { "the demo's beds": QUARRY, ...GARDENS };

const pictures = Object.entries(ALL).flatMap(([garden, text]) =>
  SUBJECTS.flatMap((subject) =>
    FORMS.map((form) => ({ garden, subject, form, sketch: once(() => sketchOf(text, form)) })),
  ),
);

describe.each(pictures)("$subject for a $form, $garden", ({ subject, form, sketch }) => {
  const drawn = once(() => {
    const text = drawPicture(subject, sketch());
    const svg = read(text);
    return { text, svg, view: viewOf(svg), labels: labelsOf(svg) };
  });

  test("words touch no others and stay in the picture", () => {
    const { view, labels } = drawn();
    const whole = { x: 0, y: 0, ...view };
    expect(labels.filter(({ box }) => !inside(box, whole)).map((label) => label.text)).toEqual([]);
    const touching = labels.flatMap((one, i) =>
      labels
        .slice(i + 1)
        .filter((two) => clash(one.box, two.box))
        .map((two) => [one.text, two.text]),
    );
    expect(touching).toEqual([]);
    expect(labels.length).toBeGreaterThan(4);
  });

  test("it has the sheet's shape, and letters that can be read", () => {
    const { view, labels } = drawn();
    const sheet = sheetOf(form);
    if (form === "phone") expect(view.widthPx).toBe(390);
    else expect(view.widthPx / view.heightPx).toBeCloseTo(Math.SQRT2, 2);
    expect(Math.min(...labels.map(({ sizePx }) => sizePx))).toBeGreaterThanOrEqual(12);
    expect(view.widthPx).toBeGreaterThanOrEqual(sheet.widthPx);
  });

  test("it tells in words what is to be seen", () => {
    const { svg } = drawn();
    expect(svg.attributes.role).toBe("img");
    const [title, desc] = (svg.attributes["aria-labelledby"] ?? "").split(" ");
    expect(textIn(byId(svg, title ?? ""))).toContain(String(sketch().plan.year));
    expect(textIn(byId(svg, desc ?? "")).length).toBeGreaterThan(20);
  });

  test("every fill that is named is there, and no id twice", () => {
    const { svg } = drawn();
    const ids = everyTag(svg).flatMap((tag) => tag.attributes.id ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    const named = everyTag(svg).flatMap(
      (tag) => /^url\(#(.+)\)$/.exec(tag.attributes.fill ?? "")?.[1] ?? [],
    );
    expect(named.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test("no number is broken, and none in a path finer than a tenth", () => {
    const { text, svg } = drawn();
    expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
    const paths = under(svg, "path").map((path) => path.attributes.d ?? "");
    expect(paths.filter((d) => /\.\d\d|e-/.test(d))).toEqual([]);
  });

  test("text is not of the machinery", () => {
    const { svg, labels } = drawn();
    const said = [...labels.map((label) => label.text), ...under(svg, "desc").map(textIn)].join(
      " ",
    );
    expect(said).not.toMatch(/window|rung|milestone|anchor|emergence|threshold|degree day/i);
  });
});

test("a planting's name is text, whatever it holds", () => {
  const odd = sketchOf(QUARRY);
  const plantings = odd.plan.plantings.map((planting) =>
    planting.crop === "beet" ? { ...planting, name: '<b>&"\u0007\u202e\uffff' } : planting,
  );
  const plan = { ...odd.plan, name: "<Lane> & \u0000", plantings };
  for (const subject of SUBJECTS) {
    const svg = parse(drawPicture(subject, { ...odd, plan, year: { ...odd.year, plans: [plan] } }));
    expect(textIn(under(svg, "title")[0] ?? svg)).toContain("<Lane> &");
    if (subject === "season")
      expect(
        labelsOf(svg)
          .map((label) => label.text)
          .join("\n"),
      ).toContain('<b>&"');
  }
});

test("a season of the demo's beds is a small file", () => {
  for (const form of FORMS)
    expect(Buffer.byteLength(drawPicture("season", sketchOf(QUARRY, form)))).toBeLessThan(60_000);
});

test("equal input gives equal bytes", () => {
  for (const { subject, sketch } of pictures.slice(0, 6))
    expect(drawPicture(subject, structuredClone(sketch()))).toBe(drawPicture(subject, sketch()));
});

test("the checks of these tests can fail: two words on one spot are found, and one that leaves the picture", () => {
  const box = { x: 0, y: 0, widthPx: 10, heightPx: 10 };
  expect(clash(box, { ...box, x: 9 })).toBe(true);
  expect(allFree([{ ...box, x: -1 }], box, [])).toBe(false);
  expect(() => parse("<a><b></a></b>")).toThrow();
  expect(() => parse('<a b="&"/>')).toThrow();
});
