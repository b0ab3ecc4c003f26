import { sayDay } from "../../base/index.ts";
import type { Plan } from "../model/plan.ts";
import type { Vocabulary } from "../model/vocabulary.ts";
import { beginsOf } from "./deeds.ts";
import type { ActObservation, Observation } from "./observation.ts";
import { type StandingFacts, standingFacts } from "./standing-facts.ts";

/** Whether a fact is a deed that can be taken back. */
export function isActObservation(observation: Observation): observation is ActObservation {
  return ["done", "seen", "failed", "lost", "left", "moved", "bought"].includes(observation.kind);
}

/** What has to be said of a fact beside others: that another puts it right, or that it cannot be so. */
export type DiaryRemark = { readonly observation: Observation; readonly is: string };

/** What holds, in day order, and what has to be said of the rest; nothing is dropped that no remark names. */
export type ResolvedDiary = {
  readonly observations: readonly Observation[];
  readonly remarks: readonly DiaryRemark[];
};

/**
 * A garden's facts as they hold together: of two that contradict each other the later counts, by its day and on one day
 * by where it is written. `facts` in the order they are written. What was taken back, put right by a later line or ended by
 * a failure stands among the remarks.
 */
export function resolveConflicts(
  observations: readonly Observation[],
  plans: readonly Plan[],
  vocabulary: Vocabulary,
): ResolvedDiary {
  const again = new Set(
    plans
      .flatMap(({ plantings }) => plantings.filter(({ repeat }) => repeat))
      .map(({ key }) => key),
  );
  const known: Known = { again, vocabulary };
  const standing = standingFacts();
  const remarks: DiaryRemark[] = [];
  for (const observation of [...observations].sort((a, b) => a.day - b.day)) {
    const over = standing
      .about(observation, supersededKinds(observation))
      .filter((earlier) => isSuperseded(earlier, observation, known));
    const gone = observation.kind === "undone" ? over.slice(-1) : over;
    const is = `no longer holds: ${sayDay(observation.day)} says otherwise`;
    remarks.push(...gone.map((earlier) => ({ observation: earlier, is })));
    if (observation.kind === "undone" && gone.length === 0)
      remarks.push({ observation, is: "nothing before it said so" });
    const odd = contradictionOf(observation, standing, vocabulary);
    if (odd !== null) remarks.push({ observation, is: odd });
    standing.remove(gone);
    if (observation.kind !== "undone") standing.add(observation);
  }
  return { observations: standing.all(), remarks };
}

/** The kinds of facts that a later one can put right, of its own planting. */
function supersededKinds(later: Observation): readonly Observation["kind"][] {
  switch (later.kind) {
    case "undone":
      return [later.what.kind];
    case "not yet":
      return "stage" in later.of ? ["seen", "not yet"] : ["not yet"];
    case "seen":
      return ["seen", "lost"];
    case "done":
      return later.task === undefined ? ["left"] : ["left", "done"];
    case "failed":
      return ["done", "seen", "not yet", "lost"];
    case "bought":
      return ["done", "seen", "failed", "lost"];
    case "moved":
    case "left":
      return [later.kind];
    default:
      return [];
  }
}

const sameSowing = (a: number | null, b: number | null) => a === b || a === null || b === null;

/** The keys of plantings that are sown more than once, and the words for work. */
type Known = { readonly again: ReadonlySet<string>; readonly vocabulary: Vocabulary };

/** Whether an earlier fact no longer holds once a later one is said. */
function isSuperseded(
  earlier: Observation,
  later: Observation,
  { again, vocabulary }: Known,
): boolean {
  if (!("planting" in earlier)) return false;
  if (later.kind === "undone") return isSame(earlier, later.what);
  if (!("planting" in later) || earlier.planting !== later.planting) return false;
  switch (later.kind) {
    case "not yet":
      return isDenied(earlier, later);
    case "seen":
      return (
        (earlier.kind === "seen" &&
          earlier.stage === later.stage &&
          earlier.sowing === later.sowing &&
          !again.has(later.planting)) ||
        earlier.kind === "lost"
      );
    case "done":
      return (
        (earlier.kind === "left" && isSameJob(earlier, later)) ||
        (earlier.kind === "done" && later.task !== undefined && earlier.task === later.task)
      );
    case "bought":
      return isOfRaising(earlier, vocabulary);
    case "failed":
      return (
        earlier.kind === "lost" ||
        ((earlier.kind === "done" || earlier.kind === "seen" || earlier.kind === "not yet") &&
          (earlier.kind === "done"
            ? later.sowing === null
            : sameSowing(earlier.sowing, later.sowing)))
      );
    case "moved":
      return earlier.kind === "moved";
    case "left":
      return earlier.kind === "left" && isSameJob(earlier, later);
    default:
      return false;
  }
}

/** Whether a fact is of the seed or seedlings that bought plants stand in for. */
function isOfRaising(fact: Observation, vocabulary: Vocabulary): boolean {
  if (fact.kind === "done") return beginsOf(fact, vocabulary) !== null;
  return (
    fact.kind === "failed" || fact.kind === "lost" || (fact.kind === "seen" && fact.stage === "up")
  );
}

/** Whether two facts are of one practice, and of one task where both name theirs. */
function isSameJob(
  a: { readonly practice: string; readonly task?: string },
  b: { readonly practice: string; readonly task?: string },
): boolean {
  const both = a.task !== undefined && b.task !== undefined;
  return a.practice === b.practice && (!both || a.task === b.task);
}

/** Whether an earlier line said to be done or seen what a later one looked for and did not find. */
function isDenied(
  earlier: Observation,
  { of, sowing }: Extract<Observation, { readonly kind: "not yet" }>,
): boolean {
  if ("stage" in of)
    return (
      (earlier.kind === "seen" &&
        earlier.stage === of.stage &&
        sameSowing(earlier.sowing, sowing)) ||
      (earlier.kind === "not yet" && "stage" in earlier.of && earlier.of.stage === of.stage)
    );
  return (
    earlier.kind === "not yet" && "practice" in earlier.of && earlier.of.practice === of.practice
  );
}

/** Whether two facts say the same of the same planting, whenever that was; one said in words names no task, and a tapped one does. */
function isSame(a: Observation, b: Observation): boolean {
  if (a.kind === "done" && b.kind === "done" && (a.task === undefined) !== (b.task === undefined))
    return a.planting === b.planting && isSameJob(a, b);
  if (a.kind === "left" && b.kind === "left") return a.planting === b.planting && isSameJob(a, b);
  const bare = (observation: Observation) =>
    JSON.stringify({ ...observation, day: 0, text: "", by: null });
  return bare(a) === bare(b);
}

/** What cannot be so beside what was said before; null where nothing is odd. */
function contradictionOf(
  observation: Observation,
  before: StandingFacts,
  vocabulary: Vocabulary,
): string | null {
  if (observation.kind !== "done") return null;
  const [lost] = before.about(observation, ["lost"]);
  if (lost) return `was lost on ${sayDay(lost.day)}, so it moves nothing`;
  if (beginsOf(observation, vocabulary) !== "once") return null;
  const up = before
    .about(observation, ["seen"])
    .find((each) => "stage" in each && each.stage === "up");
  if (up) return `comes after ${sayDay(up.day)}, when it was up`;
  return null;
}
