import { type Day, earliest } from "../../base/days/day.ts";
import { picksOf } from "../../engine/beds/ends.ts";
import { anchorsOf, type Grown, grownOf, type Life, type Season } from "../../engine/beds/lives.ts";
import { type Act, type Anchors, anchorKey } from "../../engine/growth/anchors.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import type { Fact } from "../../garden/diary/fact.ts";

/** A year told as it went, and as it was planned before anything of it was written down. */
export type Years = Season & {
  readonly planned: { readonly placed: readonly Placed[]; readonly facts: readonly Fact[] };
};

/**
 * The day of a stage: `written` in the diary or the plan, `supposed` where it should be over but nobody wrote it, `ahead`
 * where it is still to come. `planned` and `usual` are the same stage's days by the plan alone and in a usual year here,
 * null where there is none.
 */
export type Stage = {
  readonly day: Day;
  readonly known: "written" | "supposed" | "ahead";
  readonly planned: Day | null;
  readonly usual: Day | null;
};

/** The stages of one sowing in the order they come; null: it has none such, or does not get so far. */
export type Sowing = {
  readonly sowing: number;
  readonly begun: Stage;
  readonly up: Stage | null;
  readonly out: Stage | null;
  readonly picked: Stage | null;
};

/** A planting with its sowings; none where the season has no day for it, or the crop is not known. */
export type Went = Pick<Grown, "planting" | "crop" | "plan"> & {
  readonly sowings: readonly Sowing[];
};

/** Every planting of every year with its sowings' stages as of a day, in the order of the plans. */
export function stagesOf(years: Years, today: Day): readonly Went[] {
  const anchors = anchorsOf(years);
  const plannedLives = new Map(
    grownOf({ ...years.planned, plans: years.plans }).map((grown) => [
      grown.planting.key,
      grown.lives,
    ]),
  );
  return grownOf(years).map(({ planting, crop, plan, lives }) => {
    const before = plannedLives.get(planting.key) ?? [];
    const sowings = lives.map((life) => {
      const planned = before.find(({ sowing }) => sowing === life.sowing) ?? null;
      return sowingOf({
        key: planting.key,
        bought: planting.start === "plants",
        life,
        planned,
        anchors,
        years,
        today,
      });
    });
    return { planting, crop, plan, sowings };
  });
}

type One = {
  readonly key: string;
  readonly bought: boolean;
  readonly life: Life;
  readonly planned: Life | null;
  readonly anchors: Anchors;
  readonly years: Years;
  readonly today: Day;
};

function sowingOf(one: One): Sowing {
  const { life, planned, bought, anchors, key } = one;
  const stage = (act: Act, day: Day, before: Day | null) => stageOf(one, act, { day, before });
  const begins = anchors.has(anchorKey(key, life.sowing, "start")) ? "start" : "set out";
  return {
    sowing: life.sowing,
    begun: stage(begins, life.starts, planned?.starts ?? null),
    up: bought ? null : stage("up", life.up, planned?.up ?? null),
    out: life.out === null ? null : stage("set out", life.out, planned?.out ?? null),
    picked: life.ready ? pickedOf(one, planned?.ready ? planned.full : null) : null,
  };
}

type Days = { readonly day: Day; readonly before: Day | null };

function stageOf(
  { key, life, anchors, years, today }: One,
  act: Act,
  { day, before }: Days,
): Stage {
  const anchor = anchors.get(anchorKey(key, life.sowing, act)) ?? null;
  const from = anchor?.from ?? "placed";
  const sets = years.placed.find(
    ({ task: { sets } }) =>
      sets?.planting === key && sets.sowing === life.sowing && sets.act === act,
  );
  return {
    day: anchor && from !== "placed" ? anchor.day : day,
    known: from !== "placed" ? "written" : day > today ? "ahead" : "supposed",
    planned: from === "given" ? null : before,
    usual: sets?.usual ?? null,
  };
}

/** The first harvest written down, else the first ripe one seen, else what was reckoned. */
function pickedOf(one: One, planned: Day | null): Stage {
  const { key, life, years } = one;
  const picks = [...picksOf(years.placed, key, life.sowing)].sort((a, b) => a.day - b.day);
  const done = picks.flatMap((pick) => (pick.done ? [pick.done.day] : []));
  const stage = stageOf(one, "first ripe", { day: life.full, before: planned });
  const usual = picks[0]?.usual ?? null;
  if (done.length === 0) return { ...stage, usual };
  return { ...stage, day: earliest(...done), known: "written", usual };
}
