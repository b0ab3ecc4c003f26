import { raw } from "hono/html";
import type { BedsDrawing } from "../../../app/records.ts";

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
