import type { Bed } from "../../../garden/model/index.ts";
import type { BedNote, BedsSketch } from "./sketch.ts";
import { type Standing, standingByBed, standsOn } from "./standing.ts";

/** A bed with all that is drawn in it and said of it: what is in it this season, and its note; `bed` null: what stands in no bed. */
export type BedDetails<Place extends Bed | null = Bed> = {
  readonly bed: Place;
  readonly standing: readonly Standing[];
  readonly note: BedNote;
};

/** The beds that are drawn in the order of the walk, all or those that have a note, and what is in none of them. */
export type SketchDetails = {
  readonly beds: readonly BedDetails[];
  readonly rest: BedDetails<null>;
};

/** Everything that a drawing shows. */
export function detailsOf(sketch: BedsSketch): SketchDetails {
  const { plan, notes } = sketch;
  const standing = standingByBed(sketch);
  const noted = (key: string | null) => notes?.beds.find(({ bed }) => bed === key);
  const detailsIn = <Place extends Bed | null>(bed: Place): BedDetails<Place> => {
    const key = bed?.key ?? null;
    const note = noted(key) ?? { bed: key, lines: [], marks: [], freeCm: null };
    return { bed, standing: standing.get(key) ?? [], note };
  };
  const shown = plan.beds.filter(({ key }) => notes?.alone !== true || noted(key) !== undefined);
  const rest = detailsIn(null);
  const restShows = notes?.alone !== true || rest.note.lines.length > 0;
  return {
    beds: shown.map((bed) => detailsIn(bed)),
    rest: restShows ? rest : { ...rest, standing: [] },
  };
}

/** Names of what stands in a bed on the day, and of what is marked though it does not stand yet. */
export function namesIn(
  { standing, note: { marks } }: BedDetails<Bed | null>,
  { day }: Pick<BedsSketch, "day">,
): readonly string[] {
  return standing
    .filter((each) => standsOn(each, day) || marks.some(({ planting }) => planting === each.key))
    .map(({ name }) => name);
}
