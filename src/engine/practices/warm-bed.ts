import { joinWords, plus } from "../../base/index.ts";
import { FILM, isTender, plantCoverOf } from "../../crops/index.ts";
import type { Bed } from "../../garden/model/index.ts";
import type { Anchor } from "../growth/anchors.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { caution, how, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, sharedTask, type TaskOf, window } from "./task.ts";

const NAME = "warm the bed";

/** Days that film lies before a warm crop goes in. Source: common practice, two to three weeks. */
const AHEAD_DAYS = [14, 21] as const;

/** What wants a bed warm, and the day it goes in. */
type WarmPlanting = { readonly context: SowingContext; readonly anchor: Anchor };

/** The tender plantings of a bed that are yet to go in, first in first. */
function warmPlantingsIn({ contexts }: WholeGarden, bed: Bed): readonly WarmPlanting[] {
  return contexts
    .filter(
      ({ planting, crop, sowing }) =>
        planting.bed === bed.key &&
        sowing === 1 &&
        planting.inSince === null &&
        isTender(crop) &&
        !planting.without.includes(NAME),
    )
    .flatMap((context) => {
      const anchor = inPlace(context);
      return anchor ? [{ context, anchor }] : [];
    })
    .sort((a, b) => a.anchor.day - b.anchor.day);
}

function warming(garden: WholeGarden, bed: Bed): readonly TaskOf<"warm the bed">[] {
  const warm = bed.warmed ? warmPlantingsIn(garden, bed) : [];
  const [first] = warm;
  if (!first) return [];
  const { day, basis } = first.anchor;
  const [least, most] = AHEAD_DAYS;
  return [
    sharedTask(garden.plan.year, bed.key, NAME, "1", {
      window: window(plus(day, -most - 4), plus(day, -most), plus(day, -least), "earlier"),
      harm: "when you can",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Warm", object: bed.name, where: null },
      say: [
        how(
          "Rake it level, water if it is dry, and lay black film tight on the soil, its edges buried. Black fabric works too, though it warms less.",
        ),
        sign("A handful of soil crumbles and does not smear."),
        why(
          `It is for ${joinWords(warm.map(({ context }) => objectOf(context)))}, from about `,
          { day },
          " on; two to three weeks of sun under film warm it for them.",
        ),
        caution("Weeds and slugs gather under film: look before you plant."),
      ],
      because: [["Three weeks before the first of them goes in, ", { day }, "."]],
      basis,
      needs: ["black film"],
      hangsOn: anchorTaskIds(first.context, "start", "set out"),
    }),
  ];
}

/** What a diary calls film; plain fabric may as well lie over plants. */
const FILMS = FILM.words.filter((word) => plantCoverOf(word) === null).join("|");

/** Film over a bed two to three weeks ahead of the first of it that wants warm soil. */
export const WARM_BED = definePractice({
  name: NAME,
  past: { whole: "under its film" },
  words: ["warming", "warming the bed", "film"],
  deeds: [
    deed(
      [
        ...verb("warmed"),
        `(?:(?:put|laid|spread) )?(?:the )?(?:${FILMS}) (?:down )?(?:on|over) …`,
        `… (?:under|covered with) (?:${FILMS})`,
      ],
      { about: "bed" },
    ),
  ],
  tasks: { shared: (garden) => garden.plan.beds.flatMap((bed) => warming(garden, bed)) },
});
