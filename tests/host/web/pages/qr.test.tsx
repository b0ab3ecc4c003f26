import { encode } from "uqr";
import { expect, test } from "vitest";
import { Qr, qrPicture } from "../../../../src/host/web/pages/qr.tsx";

const ADDRESS = `https://garden.example/quarry-lane/helper-imre-1/${"A".repeat(43)}/`;

/** The dark squares that a path of runs paints. */
function painted(html: string): ReadonlySet<string> {
  const runs = [...html.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)];
  return new Set(
    runs.flatMap(([, x, y, width]) =>
      Array.from({ length: Number(width) }, (_, at) => `${Number(x) + at} ${y}`),
    ),
  );
}

test("a code paints just the dark squares of the address, with four light ones round them", () => {
  const html = `${<Qr address={ADDRESS} says="The address" />}`;
  const { data, size } = encode(ADDRESS, { ecc: "M", border: 4, maskPattern: 0 });
  const dark = data.flatMap((row, y) => row.flatMap((is, x) => (is ? [`${x} ${y}`] : [])));
  expect(painted(html)).toEqual(new Set(dark));
  expect(dark.some((square) => /^[0-3] | [0-3]$/.test(square))).toBe(false);
  expect(html).toContain(`viewBox="0 0 ${size} ${size}"`);
});

test("it is read out in words", () => {
  expect(`${<Qr address={ADDRESS} says="The <address>" />}`).toContain(
    'role="img" aria-label="The &lt;address&gt;"',
  );
});

test("a picture of its own shows the same squares on white", () => {
  const picture = qrPicture(ADDRESS);
  const page = `${<Qr address={ADDRESS} says="The address" />}`;
  expect(painted(picture)).toEqual(painted(page));
  const size = /viewBox="0 0 (\d+) \1"/.exec(page)?.[1];
  expect(picture).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" /);
  expect(picture).toContain(`viewBox="0 0 ${size} ${size}"`);
  expect(picture).toContain(`<path d="M0 0h${size}v${size}h-${size}z" fill="#fff"/>`);
});
