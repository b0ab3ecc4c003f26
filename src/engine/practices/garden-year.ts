import { cm, latest, plus } from "../../base/index.ts";
import { isRaised, type Plan, seasonOf } from "../../garden/model/index.ts";
import { seaSide } from "../climate/station-climates.ts";
import { type Anchor, type Basis, combineBasis } from "../growth/anchors.ts";
import { anchorOf, inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { deed } from "./deeds.ts";
import { type BegunBed, type GardenJob, hotSummerJobs } from "./hot-summer.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { caution, how, sign, why } from "./sentence.ts";
import { sharedTask, type TaskOf, window } from "./task.ts";

/** What the days of a season hang on: both frosts, or the calendar where there are none. */
const seasonBasis = ({ site }: Plan): readonly Basis[] =>
  site.lastFrost && site.firstFrost ? ["last frost", "first frost"] : ["time of year"];

/** The first of some acts, null for none. */
const firstOf = (acts: readonly (Anchor | null)[]): Anchor | null =>
  acts.reduce((first, act) => (act && (!first || act.day < first.day) ? act : first), null);

/** What the first of some acts hangs on: what each of them does, since any may come first; sorted, whatever the plan's order. */
const basisOf = (acts: readonly (Anchor | null)[]): readonly Basis[] =>
  [...new Set(acts.flatMap((act) => act?.basis ?? []))].sort();

/** New this year, and not brought in from an earlier file. */
const newHere = ({ contexts }: WholeGarden): readonly SowingContext[] =>
  contexts.filter(({ planting }) => planting.inSince === null);

/** Days before the first sowing indoors by which pots are clean. Source: house rule; time to dry. */
const POTS_AHEAD_DAYS = 10;

/** Pots before the first sowing under cover; none where nothing is raised. */
function pots(garden: WholeGarden): GardenJob | null {
  const raised = newHere(garden).filter(
    ({ planting }) => planting.start === "seed indoors" || planting.start === "winter-sown",
  );
  const acts = raised.map((context) => anchorOf(context, "start"));
  const first = firstOf(acts)?.day;
  if (first === undefined) return null;
  const due = plus(first, -POTS_AHEAD_DAYS);
  return {
    step: "pots",
    window: window(plus(due, -21), due, plus(first, -1), "earlier"),
    verb: "Clean",
    object: "pots and trays",
    minutes: 30,
    indoors: true,
    say: [
      how("Scrub pots, trays and boxes in hot soapy water, rinse them and let them dry."),
      why("Old compost carries the mould that fells seedlings."),
    ],
    because: "Before the first sowing indoors.",
    basis: basisOf(acts),
  };
}

/** Days from the season's first in which tools wait on a wet afternoon. Source: house rule; the dead of winter. */
const TOOLS = { due: 14, latest: 42 } as const;

/** Tools in the dead of winter, with the pots where those are washed then. */
function tools(garden: WholeGarden, washing: GardenJob | null): GardenJob {
  const { from } = seasonOf(garden.plan);
  const last = plus(from, TOOLS.latest);
  const together = washing && washing.window.due <= last ? washing.window.due : null;
  return {
    step: "tools",
    window: window(from, latest(from, together ?? plus(from, TOOLS.due)), last),
    verb: "Clean",
    object: "the tools",
    minutes: 30,
    indoors: true,
    say: [
      how(
        "Scrub the soil off, file hoes and spades sharp, hone knives and shears, and oil metal and handles.",
      ),
      why("A sharp hoe halves the weeding, and clean blades carry no disease."),
    ],
    because: "In the dead of winter, when nothing else waits.",
    basis: combineBasis(seasonBasis(garden.plan), washing?.basis ?? []),
  };
}

/** Days before the first thing goes into a bed by which it is ready. Source: house rule; weeds come up and are raked off. */
const BEDS_AHEAD_DAYS = 10;

/** Each open bed with what begins one of its plantings there. */
function begunIn(garden: WholeGarden): readonly BegunBed[] {
  const open = new Map(openBeds(garden.plan).map((bed) => [bed.key, bed]));
  return newHere(garden).flatMap((context) => {
    const bed = open.get(context.planting.bed ?? "");
    const act = isRaised(context.planting.start) ? inPlace(context) : anchorOf(context, "start");
    return bed && act ? [{ bed, act }] : [];
  });
}

const openBeds = ({ beds }: Plan) => beds.filter(({ kind }) => kind === "bed");

/** Beds before the first of them is sown or planted, of several the first by name; none without open beds. */
function beds({ plan }: WholeGarden, began: readonly BegunBed[]): GardenJob | null {
  const acts = began.map(({ act }) => act);
  const first = firstOf(acts)?.day;
  const [bed] = began
    .flatMap((each) => (each.act.day === first ? [each.bed] : []))
    .sort((a, b) => (a.key < b.key ? -1 : 1));
  const { from } = seasonOf(plan);
  if (first === undefined || !bed || plus(first, -1) <= from) return null;
  const due = latest(from, plus(first, -BEDS_AHEAD_DAYS));
  return {
    step: "beds",
    window: window(latest(from, plus(due, -10)), due, plus(first, -1)),
    verb: "Make … ready",
    object: "the beds",
    minutes: 60,
    say: [
      how(
        `Begin with ${bed.name}, sown or planted from about `,
        { day: first },
        openBeds(plan).length > 1 ? "; the others a week before their turn. " : ". ",
        "Pull the weeds, spread ",
        { quantity: cm(2.54) },
        " of compost where autumn brought none, loosen with a fork and rake level.",
      ),
      sign("A handful of soil crumbles."),
      caution("Stay off wet soil: trodden now, it is hard all summer."),
    ],
    because: "Before the first thing goes into a bed.",
    basis: combineBasis(basisOf(acts), seasonBasis(plan)),
  };
}

/** Days from the last frost, or from the start of a season without frost, on which a heap is turned. Source: common practice; it works again as the air warms. */
const HEAP = { afterLastFrost: 0, afterStart: 90 } as const;

/** The heap once it works again; none without open beds to feed. */
function heap({ plan }: WholeGarden): GardenJob | null {
  if (plan.beds.every(({ kind }) => kind !== "bed")) return null;
  const frost = plan.site.lastFrost;
  const due = frost
    ? plus(frost.usual, HEAP.afterLastFrost)
    : plus(seasonOf(plan).from, HEAP.afterStart);
  return {
    step: "compost",
    window: window(plus(due, -21), due, plus(due, 35)),
    verb: "Turn",
    object: "the compost heap",
    minutes: 30,
    say: [
      how(
        "If you keep a heap, fork it over, the outside to the middle, and water what is dry. Dark, crumbly compost is ready to spread.",
      ),
      why("Air makes it warm again, and it is ready by autumn."),
    ],
    because: "As the air warms and the heap begins to work.",
    basis: frost ? ["last frost"] : ["time of year"],
  };
}

/** Days after the first thing goes into a bed on which slugs are looked for. Source: house rule; the first seedlings are up. */
const SLUGS_AFTER_DAYS = 14;

/** How much the sea has to keep a place damp for slugs to be looked for there, 0 to 1, as seaSide gives it. Source: house rule; half way, as in the rest of Europe. */
const DAMP = 0.5;

/** A look for slugs by torchlight as the first seedlings are up, where springs are mild and damp; none elsewhere. */
function slugs({ plan }: WholeGarden, began: readonly BegunBed[]): GardenJob | null {
  const acts = began.map(({ act }) => act);
  const first = firstOf(acts)?.day;
  if (first === undefined || seaSide(plan.site.clock) < DAMP) return null;
  const due = plus(first, SLUGS_AFTER_DAYS);
  return {
    step: "slugs",
    window: window(plus(due, -4), due, plus(due, 21)),
    verb: "Look for … after dark",
    object: "slugs",
    minutes: 15,
    rhythm: "daily",
    say: [
      how(
        "On a mild, damp evening go round with a torch and pick slugs and snails off the seedlings. Lay a board or two between the rows, and look under them each morning. Go again every few days while the seedlings are small.",
      ),
      sign("Leaves are holed or gone overnight, and silver trails lead away."),
      why("One slug clears a row of seedlings in a night."),
      caution("Slug bait: read the label first, and keep it from children, pets and hedgehogs."),
    ],
    because: "As the first seedlings are up.",
    basis: basisOf(acts),
  };
}

function tasks(garden: WholeGarden): readonly TaskOf<"ready the garden">[] {
  if (garden.contexts.length === 0) return [];
  const washing = pots(garden);
  const began = begunIn(garden);
  const jobs = [
    tools(garden, washing),
    washing,
    beds(garden, began),
    heap(garden),
    slugs(garden, began),
    ...hotSummerJobs(garden, began),
  ];
  return jobs.flatMap((job) => {
    if (job === null) return [];
    const { step, verb, object, because, ...parts } = job;
    return [
      sharedTask(garden.plan.year, null, "ready the garden", step, {
        rhythm: "session",
        ...parts,
        harm: "when you can",
        title: { verb, object, where: null },
        because: [[because]],
      }),
    ];
  });
}

/** What a garden itself needs once a year: clean tools and pots, beds ready for the first seed, the heap turned. */
export const READY_THE_GARDEN = definePractice({
  name: "ready the garden",
  past: {
    whole: "made ready",
    tools: "ready with clean tools",
    pots: "ready with clean pots",
    beds: "ready in its beds",
    compost: "seen to at its compost heap",
    mulch: "mulched",
  },
  words: ["getting ready", "cleaning tools", "making beds ready"],
  deeds: [
    deed(["(?:cleaned|sharpened|oiled) (?:the )?tools"], { about: "garden", step: "tools" }),
    deed(["(?:cleaned|washed|scrubbed) (?:the )?(?:pots|trays|pots and trays)"], {
      about: "garden",
      step: "pots",
    }),
    deed(["(?:made|got) (?:the )?beds ready"], { about: "garden", step: "beds" }),
    deed(["mulched (?:all )?the beds"], { about: "garden", step: "mulch" }),
    deed(["(?:looked for|picked|hunted|collected) (?:the )?slugs(?: off the seedlings)?"], {
      about: "garden",
      step: "slugs",
    }),
    deed(["turned (?:the )?(?:compost|heap|compost heap)"], { about: "garden", step: "compost" }),
  ],
  tasks: { shared: tasks },
});
