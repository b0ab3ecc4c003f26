import type { Planting } from "../model/plan.ts";

const PLANTS = "(?:plants?|starts|starters|seedlings|plugs|transplants|plug plants)";
const SOLD = "(?:punnets?|packs?|six-packs?|flats?|trays?|pots?|dozen)";
const GOT =
  "(?:bought|got|was given|were given|picked up|purchased|nabbed|grabbed|scored|snagged|came home with|brought home|treated myself to)";

/** Bought plants and not seed, whatever the plan says. */
const BOUGHT_PLANTS: readonly RegExp[] = [
  /^(?:swapped|swopped|traded) .*(?:seedlings|plants|starts) for (?<subject>[\w' ]+?)(?: (?:plants|seedlings))?(?: (?:with|from|at) .+)?$/,
  new RegExp(`^(?:an? |\\w+ )?${SOLD} of (?<subject>[\\w' ]+?) from .+$`),
  new RegExp(`^${GOT} (?<subject>.+?) ${PLANTS}(?: (?:from|at|for|off|in) .+)?$`),
  new RegExp(`^bought (?:an? |\\w+ )?${SOLD} of (?<subject>.+?)(?: (?:from|at|for) .+)?$`),
  new RegExp(`^(?<subject>.+?) ${PLANTS} (?:were |was |are |is )?bought$`),
];

/** Bought, be it seed or plants. */
const BOUGHT = [
  /^(?:bought|purchased) (?<subject>.+?)(?: (?:from|at) .+)?$/,
  /^(?<subject>.+?) (?:were |was |are )?bought$/,
];

/** The planting's name whose plants were bought; null where a line says nothing of the kind. */
export function boughtPlantsIn(text: string): string | null {
  const hit = BOUGHT_PLANTS.map((pattern) => pattern.exec(text)?.groups?.subject);
  return hit.find((name) => name !== undefined) ?? null;
}

/** The name of what was bought where only a planting begun from bought plants can be meant; null for anything else. */
export function boughtIn(text: string): string | null {
  return (
    BOUGHT.map((pattern) => pattern.exec(text)?.groups?.subject).find(
      (name) => name !== undefined,
    ) ?? null
  );
}

/** Whether a planting is begun from bought plants. */
export const isBought = ({ start }: Planting) => start === "plants";
