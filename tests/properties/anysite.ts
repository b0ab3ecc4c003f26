import fc from "fast-check";
import { dayOrThrow, plus, sayDay } from "../../src/base/days/day.ts";
import { CROPS } from "../../src/crops/crops.ts";
import { PRACTICES } from "../../src/engine/practices/all.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { isRaised } from "../../src/garden/model/plantings.ts";
import { readPlan } from "../../src/garden/plan/read.ts";

const YEAR = 2027;
const NEW_YEAR = dayOrThrow(YEAR, 1, 1);

const upTo = (min: number, max: number) => fc.integer({ min, max });
/** Tenths between two numbers, all as likely; the library's own doubles crowd round nought. */
const between = (min: number, max: number) => upTo(min * 10, max * 10).map((tenths) => tenths / 10);
const maybe = <T>(of: fc.Arbitrary<T>, freq = 3) => fc.option(of, { nil: null, freq });
const twelve = (min: number, max: number) =>
  fc.array(between(min, max), { minLength: 12, maxLength: 12 });

/** The cold time: days from midwinter to its middle, how long it lasts by the usual dates, and how far the others lie. */
const frosts = fc.record({
  off: upTo(-58, 58),
  cold: upTo(2, 340),
  around: maybe(fc.tuple(upTo(0, 40), upTo(0, 40))),
});

/** A year's means [°C]: from no summer to no winter, any swing, any noise from month to month. */
const means = fc.record({
  mean: between(-20, 32),
  swing: between(0, 22),
  half: between(0.2, 10),
  noise: twelve(-3, 3),
  spreadK: maybe(twelve(0, 6)),
});

/** A crop in a way that it can begin, with some of what a gardener may ask of it; days count from New Year's Day. */
const planting = fc.constantFrom(...CROPS).chain((crop) =>
  fc.record({
    one: fc.constant(crop.one),
    start: fc.constantFrom(...crop.starts),
    days: maybe(upTo(20, 200)),
    notBefore: maybe(upTo(0, 364)),
    fixed: maybe(upTo(0, 364), 5),
    every: maybe(upTo(1, 40), 2),
    times: maybe(upTo(1, 15)),
  }),
);

type Row = typeof planting extends fc.Arbitrary<infer One> ? One : never;

const STARTS = {
  "seed indoors": "from seed indoors",
  "seed outdoors": "from seed outdoors",
  "winter-sown": "winter-sown",
  plants: "bought",
  sets: "from sets",
  crowns: "from crowns",
  tubers: "from tubers",
  cloves: "from cloves",
} as const;

const said = (offset: number) => sayDay(plus(NEW_YEAR, offset));

function lineOf({ one, start, ...asked }: Row, name: string): string {
  const raised = isRaised(start);
  const { days, notBefore, fixed, every, times } = asked;
  const words = [
    ...["5 plants", STARTS[start], `called ${name}`],
    ...(days === null ? [] : [`${days} days`]),
    ...(notBefore === null ? [] : [`not before ${said(notBefore)}`]),
    ...(fixed === null ? [] : [`${raised ? "set out" : "sow"} ${said(fixed)}`]),
    ...(every === null ? [] : [`every ${every} days`]),
    ...(every === null || times === null ? [] : [`${times} times`]),
  ];
  return `      - ${one}: ${words.join(", ")}\n`;
}

const BEDS = [
  ["Plain", "is: 4 x 1.2 m"],
  ["Film", "is: 4 x 1.2 m\n    warmed by: film"],
  ["House", "is: greenhouse, 4 x 2.4 m"],
  ["Bags", "is: 4 grow bags, 40 cm across, 36 cm high"],
] as const;

const beds = fc.tuple(...BEDS.map(() => fc.array(planting, { maxLength: 2 })));

function bedsSaid(rows: readonly (readonly Row[])[]): string {
  return BEDS.map(([name, is], bed) => {
    const lines = (rows[bed] ?? []).map((row, i) => lineOf(row, `${name} ${"AB"[i]}`));
    const crops = lines.length > 0 ? `    crops:\n${lines.join("")}` : "";
    return `  ${name}:\n    ${is}\n${crops}`;
  }).join("");
}

const site = fc.record({
  latitude: maybe(upTo(-66, 72), 6),
  trays: maybe(upTo(1, 40)),
  frosts: maybe(frosts, 6),
  means: maybe(means, 4),
});

type Place = typeof site extends fc.Arbitrary<infer One> ? One : never;

const isSouth = ({ latitude }: Place) => latitude !== null && latitude < 0;

/** Both frosts as written, round the middle of winter in that half of the world. */
function frostsSaid(place: Place): string {
  if (place.frosts === null) return "  last frost: none\n  first frost: none\n";
  const { off, cold, around } = place.frosts;
  const middle = off + (isSouth(place) ? 195 : 14);
  const dates = (usual: number) =>
    around === null
      ? said(usual)
      : [usual - around[0], usual, usual + around[1]].map(said).join(", ");
  const last = middle + Math.floor(cold / 2);
  return `  last frost: ${dates(last)}\n  first frost: ${dates(last - cold)}\n`;
}

function meansSaid(place: Place): string {
  if (place.means === null) return "";
  const { mean, swing, half, noise } = place.means;
  const turn = isSouth(place) ? 6 : 0;
  const middles = noise.map(
    (off, month) => mean + off - swing * Math.cos(((month + turn) * Math.PI) / 6),
  );
  const list = (by: number) => middles.map((middle) => (middle + by).toFixed(2)).join(", ");
  return `  weather:\n    low: [${list(-half)}]\n    high: [${list(half)}]\n`;
}

/** A sound plan of a site of any kind, with crops in beds of every kind, in every way to begin, and nobody named. */
export const anySite: fc.Arbitrary<Plan> = fc
  .tuple(site, beds)
  .map(([place, rows]) => {
    const text = [
      `garden: Any\nyear: ${YEAR}\nmeasures: metric\nplace:\n  clock: UTC\n`,
      ...(place.latitude === null ? [] : [`  latitude: ${place.latitude}\n`]),
      ...(place.trays === null ? [] : [`  greenhouse: ${place.trays} trays, kept above 7 °C\n`]),
      ...[frostsSaid(place), meansSaid(place), `beds:\n${bedsSaid(rows)}`],
    ].join("");
    return planFrom(text, place.means?.spreadK ?? null);
  })
  .filter((plan) => plan !== null);

/** The plan of a text, its months' spread [K] given apart; null where the text has a problem. */
function planFrom(text: string, spreadK: readonly number[] | null): Plan | null {
  const { plan } = readPlan(text, { garden: "any", file: "any/2027.yaml" }, PRACTICES);
  const normals = plan?.site.normals;
  return plan && normals
    ? { ...plan, site: { ...plan.site, normals: { ...normals, spreadK } } }
    : plan;
}
