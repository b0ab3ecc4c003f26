import { celsius, type Day, degreesC, joinWords, plus, type Quantity } from "../../base/index.ts";
import type { Start } from "../../crops/index.ts";
import { type Plan, seasonOf } from "../../garden/model/index.ts";
import { firstHigh } from "../climate/first-high.ts";
import { deed } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { caution, how, type Sentence, sign, why } from "./sentence.ts";
import { sharedTask, type TaskOf, window } from "./task.ts";

/** A mean high [°C] from which the sun under glass wants the vents open, and one from which it wants shade. Source: common practice, 55 and 80 °F outdoors. */
const [VENT_C, SHADE_C] = [celsius(55), celsius(80)];
/** Days that the vents are told ahead, since one day of sun comes sooner than its month's mean. Source: house rule. */
const AHEAD_DAYS = 14;

type GreenhouseJob = {
  readonly step: string;
  readonly due: Day | null;
  readonly verb: string;
  readonly say: readonly Sentence[];
};

/** Houses that are in use: whether any of them is heated, and to what; what they are called together. */
type Houses = {
  readonly keptAbove: Quantity | null;
  readonly named: string;
  /** Whether all of them are cold frames, which have a lid and neither vents nor a floor. */
  readonly frames: boolean;
};

function housesOf({ site, beds }: Plan): Houses {
  const under = beds.filter(({ kind }) => kind === "greenhouse");
  const heats = [site.greenhouse?.keptAbove, ...under.map((bed) => bed.keptAbove)];
  const named = site.greenhouse ? "the greenhouse" : joinWords(under.map(({ name }) => name));
  const frames = !site.greenhouse && under.every(({ house }) => house === "frame");
  return { keptAbove: heats.find((heat) => heat) ?? null, named, frames };
}

function greenhouseJobs(garden: WholeGarden): readonly GreenhouseJob[] {
  const { plan, climate } = garden;
  const season = seasonOf(plan);
  const mild = firstHigh(climate, season, VENT_C);
  const first = plan.site.firstFrost?.early ?? null;
  const { frames } = housesOf(plan);
  return [
    {
      step: "vents",
      due: mild && plus(mild, -AHEAD_DAYS),
      verb: frames ? "Mind the lid of" : "Mind the vents of",
      say: [
        how(
          frames
            ? "From now on prop the lid open on sunny mornings, and shut it by late afternoon to keep the warmth."
            : "From now on open vents and door on sunny mornings, and shut them by late afternoon to keep the warmth.",
        ),
        sign("The sun is on the glass before ten."),
        why("Shut up in sun it is ", { quantity: degreesC(38) }, " in an hour, and plants cook."),
      ],
    },
    {
      step: "shade",
      due: firstHigh(climate, season, SHADE_C),
      verb: "Shade",
      say: [
        how(
          frames
            ? "Lay shade cloth over it, or take the lid off for the summer."
            : "Hang shade cloth or whitewash the glass, leave vents open at night, and wet the floor on hot mornings.",
        ),
        sign("Leaves hang at noon though the soil is damp."),
        why(
          frames
            ? "Shut up in summer it is an oven."
            : "Flowers drop in great heat, and so do people: work there early.",
        ),
      ],
    },
    {
      step: "cold nights",
      due: first && plus(first, -7),
      verb: "Ready … for cold nights",
      say: coldNightSentences(housesOf(plan).keptAbove, first ?? season.to),
    },
  ];
}

/** With a heater it is tried and held; without one what is tender needs fabric, and trays the house. */
function coldNightSentences(keptAbove: Quantity | null, first: Day): readonly Sentence[] {
  const frost = why("The first frosts may come from about ", { day: first }, ".");
  const air = how("On mild dry days give it an hour of air, or mould comes.");
  if (keptAbove === null)
    return [
      how(
        "Nothing heats it. Shut it before sunset, and lay fabric over what is tender on frost nights; carry trays into the house.",
      ),
      air,
      frost,
    ];
  return [
    how("Keep it above ", { quantity: keptAbove }, "; a thermometer at plant height tells."),
    how("Shut it before sunset, and try the heater before you need it."),
    air,
    frost,
    caution("Burning heaters need fresh air: fumes kill people and plants. Follow the label."),
  ];
}

/** Whether there is a greenhouse and something stands in it: trays raised there, or a crop in a bed under glass. */
function isInUse({ plan }: WholeGarden): boolean {
  const under = plan.beds.filter(({ kind }) => kind === "greenhouse").map(({ key }) => key);
  const trays = (start: Start) => plan.site.greenhouse !== null && start === "seed indoors";
  return plan.plantings.some(
    ({ start, bed }) => trays(start) || (bed !== null && under.includes(bed)),
  );
}

function tasks(garden: WholeGarden): readonly TaskOf<"greenhouse">[] {
  const { plan } = garden;
  if (!isInUse(garden)) return [];
  return greenhouseJobs(garden).flatMap(({ step, due, verb, say }) =>
    due === null
      ? []
      : [
          sharedTask(plan.year, null, "greenhouse", step.replace(" ", "-"), {
            window: window(plus(due, -5), due, plus(due, 7)),
            harm: "this week",
            rhythm: "daily",
            minutes: 10,
            title: { verb, object: housesOf(plan).named, where: null },
            say,
            because: [["By the usual warmth and frost of the place, about ", { day: due }, "."]],
            basis: step === "cold nights" ? ["first frost"] : ["time of year"],
          }),
        ],
  );
}

/** Vents, shade and cold nights, each told once at its season. */
export const GREENHOUSE = definePractice({
  name: "greenhouse",
  past: {
    whole: "looked after under glass",
    vents: "aired in its greenhouse",
    shade: "shaded in its greenhouse",
    "cold-nights": "closed up in its greenhouse",
  },
  words: ["vents", "venting"],
  deeds: [
    deed(
      [
        "(?:opened|cleaned) the vents",
        "(?:the )?vents (?:are )?open(?:ed)?",
        "vented the greenhouse",
      ],
      {
        about: "garden",
        step: "vents",
      },
    ),
    deed(["shaded the greenhouse", "(?:the )?greenhouse (?:is )?shaded"], {
      about: "garden",
      step: "shade",
    }),
    deed(
      [
        "closed the greenhouse",
        "shut the greenhouse",
        "(?:the )?greenhouse (?:is )?(?:shut|closed)",
      ],
      {
        about: "garden",
        step: "cold-nights",
      },
    ),
  ],
  tasks: { shared: tasks },
});
