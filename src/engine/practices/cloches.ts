import { type Day, earliest, joinWords, latest, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { type Anchor, combineBasis } from "../growth/anchors.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { deed } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { caution, how, type Sentence, sign, why } from "./sentence.ts";
import {
  anchorTaskIds,
  objectOf,
  plantingTask,
  sharedTask,
  type TaskOf,
  type TaskParts,
  window,
} from "./task.ts";

const NAME = "cloches";

/** Days that cloches stand before what goes in under them, to warm the soil. Source: common practice, two weeks. */
const AHEAD_DAYS = 14;
/** Days before the usual first frost by which they stand over what is still out. Source: house rule. */
const BEFORE_FROST_DAYS = 10;
/** The least number of days that plants stand under them. Source: house rule; less is not worth setting them up. */
const LEAST_DAYS = 14;
/** Mean air [°C] from which nothing needs them as it goes in. Source: house rule, 60 °F. */
const MILD_C = 15.5;

/** What stands under the same cloches, the first to go in first. */
type Lot = readonly [Covered, ...Covered[]];
type Covered = { readonly context: SowingContext; readonly anchor: Anchor };

/** What is to go in under cloches: bed by bed where they are the bed's, else each planting by itself. */
function lotsOf({ plan, contexts }: WholeGarden): readonly Lot[] {
  const lots = new Map<string, Covered[]>();
  for (const context of contexts) {
    const { planting, bed, sowing } = context;
    const anchor = inPlace(context);
    const wanted = planting.under.includes("cloche") && !planting.without.includes(NAME);
    if (!wanted || !anchor || sowing > 1 || planting.inSince !== null) continue;
    if (bed?.kind === "greenhouse") continue;
    const shared = plan.beds.some(
      ({ key, covers }) => key === planting.bed && covers.includes("cloche"),
    );
    const key = shared ? `bed ${planting.bed}` : planting.key;
    lots.set(key, [...(lots.get(key) ?? []), { context, anchor }]);
  }
  return [...lots.values()].flatMap((lot) => {
    const [first, ...rest] = lot.sort((a, b) => a.anchor.day - b.anchor.day);
    return first ? [[first, ...rest] as const] : [];
  });
}

/** Whether cold is ahead of what goes in that day and not behind it, as for what is sown in late summer. */
function isForAutumn({ context, anchor }: Covered): boolean {
  const { lastFrost, firstFrost } = context.plan.site;
  return firstFrost !== null && anchor.day > (lastFrost?.late ?? anchor.day - 1);
}

function tasksFor(lot: Lot): readonly TaskOf<"cloches">[] {
  const [first] = lot;
  const { context, anchor } = first;
  if (isForAutumn(first)) return autumn(lot);
  if (context.climate.airC(anchor.day) >= MILD_C) return [];
  const due = plus(anchor.day, -AHEAD_DAYS);
  const on = taskOf(lot, "on", {
    window: window(plus(due, -7), due, plus(due, 7), "earlier"),
    harm: "when you can",
    say: [
      how("Set the cloches over the raked soil and close their ends."),
      sign("A handful of soil crumbles and does not smear."),
      why(
        `Two weeks under them warm the soil for ${namesOf(lot)}, from about `,
        { day: anchor.day },
        " on.",
      ),
      openInSun(),
    ],
    because: [["Two weeks before the first of them goes in, ", { day: anchor.day }, "."]],
    basis: anchor.basis,
  });
  const off = mildFrom(lot);
  return off === null ? [on] : [on, offTask(lot, off, `${on.id}`)];
}

/** From when nothing under them needs them: nights without frost, and a fortnight under them at the least. */
function mildFrom(lot: Lot): Day | null {
  const frost = lot[0].context.plan.site.lastFrost;
  if (!frost) return null;
  const tender = lot.some(({ context }) => isTender(context.crop));
  const last = lot[lot.length - 1]?.anchor.day ?? frost.usual;
  return latest(tender ? frost.late : frost.usual, plus(earliest(last, frost.late), LEAST_DAYS));
}

function offTask(lot: Lot, day: Day, on: string): TaskOf<"cloches"> {
  return taskOf(lot, "off", {
    window: window(plus(day, -7), day, plus(day, 10)),
    harm: "when you can",
    say: [
      how("Leave the cloches open for some days, then take them off on a grey day and wash them."),
      sign("Leaves touch the top, or nights stay mild."),
      why("From now on it is too hot and too dry in there."),
    ],
    because: [["Frost is over by then in most years."]],
    basis: combineBasis(["last frost"], ...lot.map(({ anchor }) => anchor.basis)),
    after: [on],
  });
}

function autumn(lot: Lot): readonly TaskOf<"cloches">[] {
  const [{ context, anchor }] = lot;
  const frost = context.plan.site.firstFrost;
  if (!frost) return [];
  const due = latest(anchor.day, plus(frost.usual, -BEFORE_FROST_DAYS));
  return [
    taskOf(lot, "on", {
      window: window(latest(anchor.day, plus(due, -14)), due, plus(due, 10), "earlier"),
      harm: "this week",
      say: [
        how(`Set the cloches over ${namesOf(lot)} and close their ends.`),
        sign("Nights turn cold."),
        why(
          "Under them it grows on for weeks. First frost is usually about ",
          { day: frost.usual },
          ".",
        ),
        openInSun(),
      ],
      because: [["Ten days before the usual first frost, ", { day: frost.usual }, "."]],
      basis: combineBasis(["first frost"], anchor.basis),
    }),
  ];
}

const openInSun = (): Sentence =>
  caution("Open them on sunny days: an hour of sun under shut cloches cooks seedlings.");

const namesOf = (lot: Lot) => joinWords(lot.map(({ context }) => objectOf(context)));

type ClocheParts = Omit<TaskParts, "rhythm" | "minutes" | "title" | "hangsOn">;

/** One task for a bed whose cloches they are, else of the planting. */
function taskOf(lot: Lot, step: "on" | "off", parts: ClocheParts): TaskOf<"cloches"> {
  const [{ context }] = lot;
  const bed = context.plan.beds.find(({ key }) => key === context.planting.bed);
  const shared = bed?.covers.includes("cloche") ? bed : null;
  const whole: TaskParts = {
    ...parts,
    rhythm: "session",
    minutes: 15,
    title: {
      verb: step === "on" ? "Cloches over" : "Cloches off",
      object: shared?.name ?? objectOf(context),
      where: shared ? null : "bed",
    },
    hangsOn: anchorTaskIds(context, "start", "set out"),
  };
  return shared
    ? sharedTask(context.plan.year, shared.key, NAME, step, whole)
    : plantingTask(context, NAME, step, whole);
}

/** Cloches over soil that is to warm and over plants that are to live, and off as it grows mild. */
export const CLOCHES = definePractice({
  name: NAME,
  words: ["cloche", "a cloche"],
  deeds: [
    deed(["(?:put )?(?:the )?cloches (?:on|over) …", "… (?:under|covered with) cloches"], {
      step: "on",
    }),
    deed(["(?:took (?:the )?)?cloches off …"], { step: "off" }),
  ],
  tasks: { shared: (garden) => lotsOf(garden).flatMap(tasksFor) },
});
