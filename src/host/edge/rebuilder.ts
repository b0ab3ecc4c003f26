/** Builds a garden's year again and again, never two builds at once. */
export type Rebuilder = {
  /** Plans or diary have changed: a build begins at once, or after the one on its way and a pause. */
  readonly start: () => void;
  /** Begins a build where none is on its way. */
  readonly resume: () => void;
  /** Waits for the build on its way, else does one; whether it went well. */
  readonly now: () => Promise<boolean>;
  /** Waits until nothing is on its way. */
  readonly settled: () => Promise<void>;
};

/** What a rebuilder needs: one build (false: it failed), a pause between builds, and a way to go on behind an answer. */
export type RebuilderPorts = {
  readonly build: () => Promise<boolean>;
  readonly pause: () => Promise<void>;
  readonly behind: (work: Promise<unknown>) => void;
};

/**
 * The first change after quiet starts a build at once; those that come during it, or in the pause after it, share one more.
 * What is asked for while the object dies is owed by what is stored, and paid by its alarm or the next request.
 */
export function rebuilderOf({ build, pause, behind }: RebuilderPorts): Rebuilder {
  let building: Promise<boolean> | null = null;
  let round: Promise<void> | null = null;
  let again = false;
  const once = () => {
    building ??= build().finally(() => {
      building = null;
    });
    return building;
  };
  const rounds = async () => {
    do {
      again = false;
      await once();
      await pause();
    } while (again);
  };
  const begin = () => {
    round = rounds().finally(() => {
      round = null;
    });
    behind(round);
  };
  return {
    start: () => {
      if (round === null) begin();
      else again = true;
    },
    resume: () => {
      if (round === null) begin();
    },
    now: once,
    settled: async () => {
      while (round !== null || building !== null) {
        await round;
        await building;
      }
    },
  };
}
