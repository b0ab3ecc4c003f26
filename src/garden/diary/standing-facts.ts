import type { Observation } from "./observation.ts";

type Kind = Observation["kind"];

/** Facts that hold so far, in the order they were added, found by what they are about and of which kind they are. */
export type StandingFacts = {
  /** Those of some kinds about the same planting, bed or garden as another, oldest first; none where that is about none. */
  readonly about: (fact: Observation, kinds: readonly Kind[]) => readonly Observation[];
  readonly add: (fact: Observation) => void;
  readonly remove: (gone: readonly Observation[]) => void;
  readonly all: () => readonly Observation[];
};

/**
 * No facts yet. To find some takes a time that grows with those of their planting and kinds alone, so that a diary is read in a
 * time that grows with its length.
 */
export function standingFacts(): StandingFacts {
  const all = new Set<Observation>();
  const bySubject = new Map<string, Set<Observation>>();
  const groupOf = (fact: Observation, kind: Kind) => {
    const subject = subjectOf(fact);
    return subject === null ? null : `${kind} ${subject}`;
  };
  return {
    about: (fact, kinds) => {
      const groups = kinds.flatMap((kind) => [...(bySubject.get(groupOf(fact, kind) ?? "") ?? [])]);
      return kinds.length < 2 ? groups : groups.sort((a, b) => a.day - b.day);
    },
    add: (fact) => {
      all.add(fact);
      const group = groupOf(fact, fact.kind);
      if (group === null) return;
      const known = bySubject.get(group) ?? new Set();
      bySubject.set(group, known.add(fact));
    },
    remove: (gone) => {
      for (const fact of gone) {
        all.delete(fact);
        bySubject.get(groupOf(fact, fact.kind) ?? "")?.delete(fact);
      }
    },
    all: () => [...all],
  };
}

function subjectOf(fact: Observation): string | null {
  const about = fact.kind === "undone" ? fact.what : fact;
  return "planting" in about ? about.planting : null;
}
