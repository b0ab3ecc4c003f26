import { type Problem, sayDay } from "../../base/index.ts";
import { cropFor } from "../../crops/index.ts";
import { diagnostic } from "../../garden/index.ts";
import { bedOf, type Plan, type Planting } from "../../garden/model/index.ts";
import { climateOf } from "../climate/climate.ts";
import { assumedContext } from "../growth/assumed-context.ts";
import { type Refusal, refusalOf } from "../growth/limits.ts";
import { ripening } from "../growth/ripening.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { fullestDay } from "../growth/trays.ts";

/**
 * The doubts that the season of this place raises, planting by planting, without a schedule or a diary:
 * `will-not-ripen` where a usual season does not bring it to harvest before what ends it, and `bad-season` where heat,
 * long days or cold will spoil it; once for the garden `greenhouse-too-full`, on the fullest day.
 */
export function seasonDoubts(plan: Plan): readonly Problem[] {
  const contexts = assumedContextsIn(plan);
  return [
    ...contexts.flatMap((context) => [...ripeningDoubt(context), ...spoiltDoubt(context)]),
    ...greenhouseDoubt(plan, contexts),
  ];
}

/**
 * Every planting of the year as if everything were done on its day; those that overwinter or are in the ground already
 * are left out.
 */
function assumedContextsIn(plan: Plan): readonly SowingContext[] {
  const climate = climateOf(plan, []);
  return plan.plantings.flatMap((planting) => {
    const crop = cropFor(planting);
    if (!crop || crop.overwinter || planting.inSince !== null) return [];
    const bed = bedOf(plan, planting);
    const none = {
      sowing: 1,
      anchors: new Map(),
      observations: [],
      around: () => true,
      soFar: null,
    };
    return assumedContext({ plan, planting, crop, bed, climate: climate.at(bed), ...none }) ?? [];
  });
}

function greenhouseDoubt({ site }: Plan, contexts: readonly SowingContext[]): readonly Problem[] {
  const full = fullestDay(contexts);
  if (!site.greenhouse || !full || full.trays <= site.greenhouse.trays) return [];
  const is = `Seedlings take ${full.trays} trays about ${sayDay(full.day)} and the greenhouse has ${site.greenhouse.trays}`;
  return [
    diagnostic(
      "greenhouse-too-full",
      site.greenhouse.at,
      is,
      "Raise fewer, buy some plants, or sow some outdoors",
    ),
  ];
}

function ripeningDoubt(context: SowingContext): readonly Problem[] {
  const { planting } = context;
  const answer = ripening(context);
  if (answer.ripens) return [];
  const mayBeRaised = planting.start === "seed outdoors" && context.crop.indoors !== null;
  const cover = mayBeRaised ? ", or start it under cover" : "";
  const quicker =
    answer.fits === null
      ? `No kind of it is quick enough; grow ${context.climate.underGlass ? "" : "it under glass, or "}something else here`
      : `Choose one of ${answer.fits} days or fewer${cover}`;
  return [diagnostic("will-not-ripen", planting.at, `${nameOf(planting)}: ${answer.is}`, quicker)];
}

const SPOILT: Readonly<Partial<Record<Refusal, readonly [string, string]>>> = {
  asleep: ["the soil is so warm then that its seed sleeps", "Sow it in a cooler part of the year"],
  heat: ["it would be ready in heat that ends it", "Sow it earlier, or for autumn"],
  "long days": ["it would bolt in the long days", "Sow it earlier, or for autumn"],
  cold: ["the cold makes it bolt while it is young", "Sow it later, or raise plants indoors"],
};

function spoiltDoubt(context: SowingContext): readonly Problem[] {
  const { planting } = context;
  const sown = anchorOf(context, "start");
  if (planting.start !== "seed outdoors" || !sown) return [];
  const refusal = refusalOf(context, sown.day);
  const wording = refusal === null ? undefined : SPOILT[refusal];
  if (!wording) return [];
  const is = `${nameOf(planting)}: sown ${sayDay(sown.day)}, ${wording[0]}`;
  return [diagnostic("bad-season", planting.at, is, wording[1])];
}

const nameOf = ({ name, written }: Planting): string => name ?? written;
