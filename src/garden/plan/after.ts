import { joinWords, nearest, type Problem, slug } from "../../base/index.ts";
import { plainName, plantingsNamed } from "../model/named.ts";
import type { Planting } from "../model/plan.ts";
import { ownName } from "../model/plantings.ts";
import { diagnostic } from "./codes.ts";
import type { UnlinkedPlanting } from "./plantings.ts";
import type { Words } from "./tree.ts";

/**
 * The plantings with the one that each follows: the key of a planting of this plan, or the slug of the name as written
 * where none fits, to be looked for in earlier years. Problems: `fits-several`, `no-planting-called` for a near miss,
 * `after-circle`.
 */
export function withPredecessors(
  found: readonly UnlinkedPlanting[],
  problems: Problem[],
): readonly Planting[] {
  const plantings = found.map(({ planting }) => planting);
  const done = found.map(({ planting, after, between }) => {
    if (between) resolve(between, planting, { plantings, problems });
    const follows = after && resolve(after, planting, { plantings, problems });
    return { ...planting, after: follows };
  });
  const circle = circleIn(done);
  if (circle === null) return done;
  const at = found.find(({ planting }) => planting.key === circle.key)?.after?.at ?? circle.at;
  problems.push(
    diagnostic("after-circle", at, "These plantings each wait for the other", "Take out one after"),
  );
  return done;
}

type NameSearch = { readonly plantings: readonly Planting[]; readonly problems: Problem[] };

function resolve(
  words: Words,
  planting: Planting,
  { plantings, problems }: NameSearch,
): string | null {
  const others = plantings.filter(({ key }) => key !== planting.key);
  const fitting = plantingsNamed(words.text, others);
  const [first, second] = fitting;
  if (first && !second) return first.key;
  if (first && second) {
    const names = fitting.map((one) => ownName(one).replaceAll("-", " "));
    problems.push(
      diagnostic(
        "fits-several",
        words.at,
        `${words.text.slice(0, 60)} fits ${joinWords(names)}`,
        "Write the name of one",
      ),
    );
    return null;
  }
  const plain = plainName(words.text);
  const near = nearest(plain, others.flatMap(candidateNames));
  if (near === null) return slug(plain);
  problems.push(
    diagnostic(
      "no-planting-called",
      words.at,
      `Nothing in this plan is called ${plain.slice(0, 60)}`,
      `Did you mean ${near}`,
    ),
  );
  return null;
}

function candidateNames(planting: Planting): readonly string[] {
  return [planting.name, planting.written, planting.crop].filter((name) => name !== null);
}

/** The first planting that follows itself through others, or null. */
function circleIn(plantings: readonly Planting[]): Planting | null {
  const next = new Map(plantings.map(({ key, after }) => [key, after]));
  for (const planting of plantings) {
    let at = planting.after;
    for (let steps = 0; at !== null && steps <= plantings.length; steps++) {
      if (at === planting.key) return planting;
      at = next.get(at) ?? null;
    }
  }
  return null;
}
