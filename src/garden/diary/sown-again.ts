import type { DiaryContext, LineBy } from "./clause.ts";
import { deedsIn } from "./deeds.ts";
import type { Observation } from "./observation.ts";
import { subjectOf } from "./subjects.ts";

const AGAIN: readonly RegExp[] = [
  /^(?<subject>.+?),? (?:round|take) (?:two|2|three|3)$/,
  /^(?<subject>.+?),? (?:second|third) (?:go|try|attempt)$/,
  /^(?:redid|redone|redoing|re-did|re-doing|did) (?<subject>.+?)(?: again| over)?(?<= again| over)$/,
  /^(?:redid|redone|redoing|re-did|re-doing) (?<subject>.+)$/,
  /^(?:restarted|started over with) (?<subject>.+)$/,
  /^(?:re-?(?:sowed|sown|seeded|planted)) (?<subject>.+)$/,
  /^(?:sowed|sown|seeded|planted) (?<subject>.+?) (?:again|a second time|once more|anew)$/,
  /^(?:sowed|sown|seeded|planted) again:? (?<subject>.+)$/,
  /^(?<subject>.+?) (?:is |are |was |were )?(?:re-?(?:sowed|sown|seeded|planted)|(?:sown|sowed|seeded|planted) (?:again|a second time|once more|anew))$/,
];

/**
 * A planting that the plan sows once and that was begun anew: what was sown before came to nothing, and it is sown on that
 * day. Null where the line says nothing of the kind, or of what is sown several times anyway.
 */
export function sownAgainIn(
  attributed: LineBy,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const { line } = attributed;
  for (const pattern of AGAIN) {
    const name = pattern.exec(text)?.groups?.subject;
    if (name === undefined) continue;
    const subject = subjectOf(name, { day: line.day }, context.plans);
    if ("why" in subject || subject.planting.repeat !== null) return null;
    const verb = text.includes("plant") ? "planted" : "sowed";
    const begun = deedsIn(attributed, `${verb} ${name}`, context)?.filter(
      ({ kind }) => kind === "done",
    );
    if (!begun?.length) return null;
    const { key: planting } = subject.planting;
    const { day, text: written } = line;
    return [{ kind: "failed", day, planting, sowing: null, text: written }, ...begun];
  }
  return null;
}
