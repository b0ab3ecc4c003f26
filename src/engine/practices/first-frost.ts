import { type Day, plus } from "../../base/index.ts";
import type { Basis } from "../growth/anchors.ts";
import { coloursIndoors } from "../growth/bearing.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { glassEnd } from "../growth/under-glass.ts";
import { deed } from "./deeds.ts";
import { endsWithSeason, frostAheadTasks } from "./frost-ahead.ts";
import { definePractice } from "./practice.ts";
import { how, sign, type TextPiece, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** What goes on ripening once it is picked is taken green as well. */
function greenToo({ crop }: SowingContext): string {
  return coloursIndoors(crop) ? ", the green ones too; they colour indoors" : "";
}

/** The day that ends it in a usual year, and how that is said. */
type PickingEnd = {
  readonly day: Day;
  readonly how: string;
  readonly sign: string;
  readonly why: readonly TextPiece[];
  readonly basis: readonly Basis[];
};

function inTheOpen({ plan }: SowingContext): PickingEnd | null {
  const day = plan.site.firstFrost?.usual;
  if (!day) return null;
  return {
    day,
    how: "Pick all that is sound before a frost night",
    sign: "The forecast names a night near freezing that covers can't hold.",
    why: ["The first frost is usual about ", { day }, "."],
    basis: ["first frost"],
  };
}

/** Under glass days that get too short end it, or the frost that comes in. */
function underGlass(context: SowingContext): PickingEnd | null {
  const end = glassEnd(context);
  if (!end) return null;
  const { day, by } = end;
  return {
    day,
    how: "Pick all that is sound",
    sign: coloursIndoors(context.crop)
      ? "Nothing has coloured for a week, or leaves go grey with mould."
      : "Hardly anything new comes, or leaves go grey with mould.",
    why:
      by === "frost"
        ? ["Frost gets in there from about ", { day }, "; nothing heats it."]
        : ["The days are too short for more to ripen from about ", { day }, " on."],
    basis: by === "frost" ? ["first frost"] : ["day length"],
  };
}

function tasks(context: SowingContext): readonly TaskOf<"first frost">[] {
  const end = context.climate.underGlass ? underGlass(context) : inTheOpen(context);
  if (!end || !endsWithSeason(context, end.day)) return [];
  return [
    plantingTask(context, "first frost", "pick", {
      window: window(plus(end.day, -7), plus(end.day, -2), plus(end.day, 5), "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 30,
      title: { verb: "Pick the last", object: objectOf(context), where: "bed" },
      say: [
        how(`${end.how}${greenToo(context)}. Clear the plants.`),
        sign(end.sign),
        why(...end.why),
      ],
      because: [end.why],
      basis: end.basis,
      hangsOn: anchorTaskIds(context, "set out"),
      needs: ["trays or crates"],
      sets: { planting: context.planting.key, sowing: context.sowing, act: "end" },
    }),
  ];
}

/** What the first frost would take, picked before it is usual; that it may come is told once for the garden. */
export const FIRST_FROST = definePractice({
  name: "first frost",
  past: { whole: "picked before the frost" },
  words: ["frost"],
  deeds: [
    deed(
      ["picked … before (?:the )?(?:first )?frost", "… picked before (?:the )?(?:first )?frost"],
      { step: "pick" },
    ),
  ],
  thingsFor: "the first frost",
  away: { neighbour: { help: "frost", may: ({ step }) => step.endsWith("warning") } },
  tasks: { rest: tasks, shared: frostAheadTasks },
});
