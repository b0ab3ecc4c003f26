import { isTender } from "../crops/crops.ts";
import { plus } from "../days/day.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import type { Practice } from "./practice.ts";
import { caution, how, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Days that film lies before a warm crop goes in. Source: common practice, two to three weeks. */
const AHEAD_DAYS = [14, 21] as const;

function tasks(growing: Growing): readonly Task[] {
  const { bed, crop, planting } = growing;
  if (planting.inSince !== null || !bed?.warmed || !isTender(crop) || growing.sowing > 1) return [];
  const placed = inPlace(growing);
  if (!placed) return [];
  const [least, most] = AHEAD_DAYS;
  return [
    plantingTask(growing, "warm the bed", "1", {
      window: window(
        plus(placed.day, -most - 4),
        plus(placed.day, -most),
        plus(placed.day, -least),
        "earlier",
      ),
      harm: "when you can",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Warm the bed for", object: objectOf(growing), where: "bed" },
      say: [
        how(
          "Rake it level, water if it is dry, and lay black film tight on the soil, its edges buried. Fabric warms it less, but does.",
        ),
        sign("A handful of soil crumbles and does not smear."),
        why(
          "They go in about ",
          { day: placed.day },
          "; two to three weeks of sun under film warm it for them.",
        ),
        caution("Weeds and slugs gather under it: look before you plant."),
      ],
      because: () => [["Three weeks before it goes in, ", { day: placed.day }, "."]],
      grounds: placed.grounds,
      needs: ["black film"],
      hangsOn: tasksBehind(growing, "start", "set out"),
    }),
  ];
}

/** Film over a bed two to three weeks ahead of what wants warm soil. */
export const WARM_BED: Practice = { name: "warm the bed", pass: "rest", tasks };
