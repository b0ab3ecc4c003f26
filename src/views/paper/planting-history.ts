import { type Day, earliest } from "../../base/days/day.ts";
import { picksOf } from "../../engine/beds/ends.ts";
import {
  anchorsOf,
  type GardenSeason,
  type Life,
  type PlantingLives,
  plantingLivesOf,
} from "../../engine/beds/lives.ts";
import { type AnchorAct, type Anchors, anchorKey } from "../../engine/growth/anchors.ts";

/** A year told as it went, and as it was planned before anything of it was written down. */
export type ComparedSeason = GardenSeason & {
  readonly planned: Pick<GardenSeason, "scheduled" | "observations">;
};

/**
 * The day of a stage: `written` in the diary or the plan, `supposed` where it should be over but nobody wrote it, `ahead`
 * where it is still to come. `planned` and `usual` are the same stage's days by the plan alone and in a usual year here,
 * null where there is none.
 */
export type StageRecord = {
  readonly day: Day;
  readonly known: "written" | "supposed" | "ahead";
  readonly planned: Day | null;
  readonly usual: Day | null;
};

/** The stages of one sowing in the order they come; null: it has none such, or does not get so far. */
export type SowingHistory = {
  readonly sowing: number;
  readonly begun: StageRecord;
  readonly up: StageRecord | null;
  readonly out: StageRecord | null;
  readonly picked: StageRecord | null;
};

/** A planting with its sowings; none where the season has no day for it, or the crop is not known. */
export type PlantingHistory = Pick<PlantingLives, "planting" | "crop" | "plan"> & {
  readonly sowings: readonly SowingHistory[];
};

/** Every planting of every year with its sowings' stages as of a day, in the order of the plans. */
export function plantingHistoriesOf(
  season: ComparedSeason,
  today: Day,
): readonly PlantingHistory[] {
  const anchors = anchorsOf(season);
  const plannedLives = new Map(
    plantingLivesOf({ ...season.planned, plans: season.plans }).map((grown) => [
      grown.planting.key,
      grown.lives,
    ]),
  );
  return plantingLivesOf(season).map(({ planting, crop, plan, lives }) => {
    const before = plannedLives.get(planting.key) ?? [];
    const sowings = lives.map((life) => {
      const planned = before.find(({ sowing }) => sowing === life.sowing) ?? null;
      return sowingHistoryOf({
        key: planting.key,
        bought: planting.start === "plants",
        life,
        planned,
        anchors,
        season,
        today,
      });
    });
    return { planting, crop, plan, sowings };
  });
}

type SowingHistoryInput = {
  readonly key: string;
  readonly bought: boolean;
  readonly life: Life;
  readonly planned: Life | null;
  readonly anchors: Anchors;
  readonly season: ComparedSeason;
  readonly today: Day;
};

function sowingHistoryOf(input: SowingHistoryInput): SowingHistory {
  const { life, planned, bought, anchors, key } = input;
  const stage = (act: AnchorAct, day: Day, before: Day | null) =>
    stageOf(input, act, { day, before });
  const begins = anchors.has(anchorKey(key, life.sowing, "start")) ? "start" : "set out";
  return {
    sowing: life.sowing,
    begun: stage(begins, life.starts, planned?.starts ?? null),
    up: bought ? null : stage("up", life.up, planned?.up ?? null),
    out: life.out === null ? null : stage("set out", life.out, planned?.out ?? null),
    picked: life.ready ? pickedOf(input, planned?.ready ? planned.full : null) : null,
  };
}

type ComparedDays = { readonly day: Day; readonly before: Day | null };

function stageOf(
  { key, life, anchors, season, today }: SowingHistoryInput,
  act: AnchorAct,
  { day, before }: ComparedDays,
): StageRecord {
  const anchor = anchors.get(anchorKey(key, life.sowing, act)) ?? null;
  const from = anchor?.from ?? "placed";
  const sets = season.scheduled.find(
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
function pickedOf(input: SowingHistoryInput, planned: Day | null): StageRecord {
  const { key, life, season } = input;
  const picks = [...picksOf(season.scheduled, key, life.sowing)].sort((a, b) => a.day - b.day);
  const done = picks.flatMap((pick) => (pick.done ? [pick.done.day] : []));
  const stage = stageOf(input, "first ripe", { day: life.full, before: planned });
  const usual = picks[0]?.usual ?? null;
  if (done.length === 0) return { ...stage, usual };
  return { ...stage, day: earliest(...done), known: "written", usual };
}
