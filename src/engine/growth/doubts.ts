import { sayDay } from "../../base/days/day.ts";
import { inOrder, type Problem } from "../../base/problems/problem.ts";
import { cropFor } from "../../crops/crops.ts";
import type { Plan, Planting } from "../../garden/model/plan.ts";
import { tell } from "../../garden/plan/codes.ts";
import { type At, type Read, readPlan } from "../../garden/plan/read.ts";
import { climateOf } from "../climate/climate.ts";
import { anchorOf, type Growing } from "./growing.ts";
import { type Refusal, refusalOf } from "./limits.ts";
import { ripening } from "./ripening.ts";
import { supposed } from "./supposed.ts";
import { fullestDay } from "./trays.ts";

/** A plan's text read and checked as readPlan does, with what this place's season leaves in doubt. */
export function readInSeason(text: string, at: At): Read {
  const read = readPlan(text, at);
  return read.plan === null
    ? read
    : { ...read, problems: inOrder([...read.problems, ...seasonDoubts(read.plan)]) };
}

/**
 * What the season of this place leaves in doubt, planting by planting, nothing placed and nothing in the diary yet:
 * `will-not-ripen` where a usual season does not bring it to harvest before what ends it, and `bad-season` where heat,
 * long days or cold will spoil it; once for the garden `greenhouse-too-full`, on the fullest day.
 */
export function seasonDoubts(plan: Plan): readonly Problem[] {
  const growings = supposedIn(plan);
  return [
    ...growings.flatMap((growing) => [...ripeningDoubt(growing), ...spoiltDoubt(growing)]),
    ...plan.plantings.flatMap((planting) => winterDoubt(plan, planting)),
    ...greenhouseDoubt(plan, growings),
  ];
}

/** What stands the winter is counted from its frosts; without any, only a day of the gardener's own tells it. */
function winterDoubt({ site }: Plan, planting: Planting): readonly Problem[] {
  const { fixed, within, inSince } = planting;
  const given = fixed.start ?? within ?? inSince;
  if (!cropFor(planting)?.overwinter || site.firstFrost || given !== null) return [];
  const is = `${nameOf(planting)}: it goes in by the frosts of autumn, and the plan has none`;
  return [tell("bad-season", planting.at, is, "Name a month, such as plant: this October")];
}

/** Every planting of the year as it would go if everything were done on its day; those that winter or stand in it already left out. */
function supposedIn(plan: Plan): readonly Growing[] {
  const climate = climateOf(plan, []);
  return plan.plantings.flatMap((planting) => {
    const crop = cropFor(planting);
    if (!crop || crop.overwinter || planting.inSince !== null) return [];
    const bed = plan.beds.find(({ key }) => key === planting.bed) ?? null;
    const none = { sowing: 1, anchors: new Map(), facts: [], around: () => true };
    return supposed({ plan, planting, crop, bed, climate, ...none }) ?? [];
  });
}

function greenhouseDoubt({ site }: Plan, growings: readonly Growing[]): readonly Problem[] {
  const full = fullestDay(growings);
  if (!site.greenhouse || !full || full.trays <= site.greenhouse.trays) return [];
  const is = `Seedlings take ${full.trays} trays about ${sayDay(full.day)} and the greenhouse has ${site.greenhouse.trays}`;
  return [
    tell(
      "greenhouse-too-full",
      site.greenhouse.at,
      is,
      "Raise fewer, buy some plants, or sow some outdoors",
    ),
  ];
}

function ripeningDoubt(growing: Growing): readonly Problem[] {
  const { planting } = growing;
  const answer = ripening(growing);
  if (answer.ripens) return [];
  const mayBeRaised = planting.start === "seed outdoors" && growing.crop.indoors !== null;
  const cover = mayBeRaised ? ", or start it under cover" : "";
  const quicker =
    answer.fits === null
      ? "No kind of it is quick enough; grow it under glass, or something else here"
      : `Choose one of ${answer.fits} days or fewer${cover}`;
  return [tell("will-not-ripen", planting.at, `${nameOf(planting)}: ${answer.is}`, quicker)];
}

const SPOILT: Readonly<Partial<Record<Refusal, readonly [string, string]>>> = {
  asleep: ["the soil is so warm then that its seed sleeps", "Sow it in a cooler part of the year"],
  heat: ["it would be ready in heat that ends it", "Sow it earlier, or for autumn"],
  "long days": ["it would bolt in the long days", "Sow it earlier, or for autumn"],
  cold: ["the cold makes it bolt while it is young", "Sow it later, or raise plants indoors"],
};

function spoiltDoubt(growing: Growing): readonly Problem[] {
  const { planting } = growing;
  const sown = anchorOf(growing, "start");
  if (planting.start !== "seed outdoors" || !sown) return [];
  const refusal = refusalOf(growing, sown.day);
  const told = refusal === null ? undefined : SPOILT[refusal];
  if (!told) return [];
  const is = `${nameOf(planting)}: sown ${sayDay(sown.day)}, ${told[0]}`;
  return [tell("bad-season", planting.at, is, told[1])];
}

const nameOf = ({ name, written }: Planting): string => name ?? written;
