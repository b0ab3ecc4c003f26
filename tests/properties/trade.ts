import { CROPS } from "../../src/crops/crops.ts";
import type { Start } from "../../src/crops/facts.ts";
import { oneOf } from "../garden/plan/random.ts";

const FROM: Readonly<Record<Start, string>> = {
  "seed indoors": "from seed indoors",
  "winter-sown": "winter-sown",
  "seed outdoors": "from seed outdoors",
  plants: "bought",
  tubers: "from tubers",
  cloves: "from cloves",
  sets: "from sets",
  crowns: "from crowns",
};

/** A cold inland garden, a mild one by the sea, and a warm one: frosts, mean lows and highs of each month. */
const PLACES = [
  [
    "last frost: 20 Apr, 6 May, 21 May\n  first frost: 17 Sep, 2 Oct, 17 Oct",
    "[11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]",
    "[30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]",
  ],
  [
    "last frost: 14 Mar, 3 Apr, 22 Apr\n  first frost: 20 Oct, 8 Nov, 26 Nov",
    "[36, 37, 39, 42, 47, 51, 54, 55, 51, 46, 40, 37]",
    "[47, 50, 54, 59, 66, 70, 77, 77, 71, 60, 52, 46]",
  ],
  [
    "last frost: 1 Mar, 18 Mar, 5 Apr\n  first frost: 1 Nov, 14 Nov, 30 Nov",
    "[33, 36, 43, 51, 60, 68, 71, 70, 64, 53, 42, 36]",
    "[52, 57, 65, 73, 80, 87, 90, 88, 82, 73, 63, 54]",
  ],
] as const;

/**
 * A sound plan of so many plantings of any crops, each begun in any of its ways, five to a bed, nobody named. No two
 * plantings are of one crop, or so many of each where `ofEach` says so.
 */
export function anyTrade(roll: () => number, plantings: number, ofEach = 1): string {
  const [frosts, low, high] = oneOf(PLACES, roll);
  const crops = [...CROPS].sort(() => roll() - 0.5).slice(0, plantings / ofEach);
  const lines = Array.from({ length: ofEach }, (_, i) => i).flatMap((i) =>
    crops.map(({ one, starts }) => {
      const named = i === 0 ? "" : ` kind ${i + 1},`;
      return `      - ${one}:${named} 8 plants, ${FROM[oneOf(starts, roll)]}`;
    }),
  );
  const beds = Array.from({ length: Math.ceil(lines.length / 5) }, (_, i) =>
    [`  Bed ${i + 1}:`, "    is: 24 x 4 ft", "    crops:", ...lines.slice(i * 5, i * 5 + 5)].join(
      "\n",
    ),
  );
  return `garden: Any
year: 2027
place:
  clock: America/Denver
  latitude: 42
  ${frosts}
  greenhouse: 60 trays, kept above 45 °F
  weather:
    low: ${low}
    high: ${high}
beds:
${beds.join("\n")}
`;
}
