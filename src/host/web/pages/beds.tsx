import { raw } from "hono/html";
import type { BedsDrawing } from "../../../app/records.ts";
import { joinWords } from "../../../base/index.ts";

/**
 * The beds from above; `caption` says what is to be seen. Below them the same in words, bed by bed, for who would rather read,
 * where the page has not said it already.
 */
export function BedsFigure({
  drawing: { svg, words },
  caption,
  told = false,
}: {
  readonly drawing: BedsDrawing;
  readonly caption: string;
  readonly told?: boolean;
}) {
  return (
    <figure class="beds">
      <figcaption>{caption}</figcaption>
      {raw(svg)}
      {!told && (
        <details>
          <summary>The same in words</summary>
          <dl>
            {words.map(({ name, text }) => (
              <>
                <dt>{name}</dt>
                <dd>{text}</dd>
              </>
            ))}
          </dl>
        </details>
      )}
    </figure>
  );
}

/** Where the drawing of today's jobs is, the names of the beds in it, and about how high it is [px] where it is 358 px wide. */
export type BedsOfToday = {
  readonly src: string;
  readonly names: readonly string[];
  readonly heightPx: number;
};

/** Today's jobs on the beds; what they are stands beside it in words. */
export function BedsToday({ src, names, heightPx }: BedsOfToday) {
  const alt = `The beds with a job today, from above: ${joinWords(names)}, each with what is to be done framed in it`;
  return (
    <figure class="beds">
      <figcaption>Where it is to be done</figcaption>
      <img src={src} alt={alt} width={358} height={heightPx} loading="lazy" />
    </figure>
  );
}
