import { capital, isoOf, joinFirst, quantity, sayDay, sayQuantity } from "../../base/index.ts";
import type { Spell } from "../../engine/index.ts";
import { type Plan, planOn } from "../../garden/model/index.ts";
import { EVENING_BEFORE, type Event } from "./event.ts";
import { eventFor } from "./event-for.ts";
import { titleNaming } from "./titles.ts";

/** Names that a sentence takes before the rest are counted. Source: house rule. */
const NAMES = 6;

/** A notice of each wet or dry spell ahead on its first day, all day, rung the evening before. In day order. */
export function spellEvents(plans: readonly Plan[], spells: readonly Spell[]): readonly Event[] {
  return spells.map((spell) => {
    const plan = planOn(plans, spell.day);
    const { title, lines } = wordsOf(plan, spell);
    const text = lines.join("\n");
    return {
      ...eventFor([], {
        key: `${plan.year}/garden/${spell.kind.replace(" ", "-")}/${isoOf(spell.day)}`,
        set: "both",
        kind: "warning",
        ...{ title, text, readerText: text },
        when: { kind: "all day", day: spell.day },
        day: spell.day,
        busy: false,
        remindMinutesBefore: EVENING_BEFORE,
      }),
      categories: [spell.kind],
    };
  });
}

type SpellWords = { readonly title: string; readonly lines: readonly string[] };

function wordsOf(plan: Plan, spell: Spell): SpellWords {
  switch (spell.kind) {
    case "soaking":
      return soakingWords(plan, spell);
    case "dry spell":
      return dryWords(spell);
    case "blight weather":
      return blightWords(spell);
  }
}

function soakingWords(
  { measures }: Plan,
  { rainMm, slugFood, splitting }: Extract<Spell, { kind: "soaking" }>,
): SpellWords {
  const rain = sayQuantity(quantity(Math.round(rainMm / 5) * 5, "mm"), measures);
  return {
    title: `${rain} of rain: no watering outdoors`,
    lines: [
      "Water nothing in the open until the soil is dry a finger deep, and stay off wet beds.",
      ...(splitting.length > 0
        ? [`Pick ripe ${joinFirst(splitting, NAMES)} first: they split.`]
        : []),
      ...(slugFood.length > 0
        ? [`Slugs come out of it: look ${joinFirst(slugFood, NAMES)} over after dark.`]
        : []),
      `The forecast says about ${rain}.`,
    ],
  };
}

function dryWords({ since, until, seeds }: Extract<Spell, { kind: "dry spell" }>): SpellWords {
  return {
    title: "Dry spell: water deep and mulch",
    lines: [
      "Water deep at the roots early in the day, and mulch what is tall enough.",
      ...(seeds.length > 0
        ? [`Keep these rows damp every day until they are up: ${joinFirst(seeds, NAMES)}.`]
        : []),
      `No rain to speak of since ${sayDay(since)}, and none is forecast until ${sayDay(until)}.`,
    ],
  };
}

function blightWords({ plants }: Extract<Spell, { kind: "blight weather" }>): SpellWords {
  const names = joinFirst(plants, NAMES);
  return {
    title: titleNaming("Look … over for blight", plants),
    lines: [
      `${capital(names)}: cut leaves with brown blotches out and bin them, off the compost heap. Water at the roots, never over the leaves.`,
      "Two mild, damp days running: in such weather late blight spreads.",
      "If you spray at all, do as the label and local rules say.",
    ],
  };
}
