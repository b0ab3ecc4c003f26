/** What a bed holds: sown in rows, raised indoors, sown again and again, cloves that stay over winter. */
const CROPS = [
  "potato: NAME, 12 plants, sprouted first",
  "carrot: NAME, 3 rows, under a board",
  "beet: NAME, 2 rows",
  "lettuce: NAME, 2 rows, every 14 days, 3 times",
  "tomato: NAME, 6 plants, from seed indoors",
  "garlic: NAME, 40 cloves, plant this October",
] as const;

/** A year's plan of so many plantings, six in a bed: two people with hours, absences, normals and a diary. */
export function gardenText({ year, plantings }: { year: number; plantings: number }): string {
  const beds = Array.from({ length: Math.ceil(plantings / CROPS.length) }, (_, bed) =>
    bedText(bed, Math.min(CROPS.length, plantings - bed * CROPS.length)),
  );
  return `garden: Bench
year: ${year}
measures: inches and °F
place:
  clock: America/Denver
  latitude: 46.6
  last frost: 20 Apr, 6 May, 21 May
  first frost: about 2 Oct
  greenhouse: ${beds.length * 20} trays, kept above 45 °F
  weather:
    low: [11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]
    high: [30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]
people:
  Imre: { gardens: Wed 17-20 and Sat 8-14, home: weekdays from 17:30 and weekends }
  Oda: { gardens: Tue 17-20 and Sun 9-14, home: every day but Tue }
away:
  - Oda, 19 to 23 Jun
  - everybody, 1 Aug to 7 Aug
beds:
${beds.join("\n")}
diary:
  - 20 Apr: soil in Bed 1 48 °F
`;
}

function bedText(bed: number, plantings: number): string {
  const crops = CROPS.slice(0, plantings).map(
    (crop) => `      - ${crop.replace("NAME", `sort ${bed}`)}`,
  );
  return `  Bed ${bed}:\n    is: 24 x 4 ft\n    crops:\n${crops.join("\n")}`;
}
