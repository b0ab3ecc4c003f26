import { raw } from "hono/html";
import type { BedsDrawing } from "../../../app/records.ts";

/** The beds from above, and below them the same in words, bed by bed, for who would rather read; `caption` says what is to be seen. */
export function BedsFigure({
  drawing: { svg, words },
  caption,
}: {
  readonly drawing: BedsDrawing;
  readonly caption: string;
}) {
  return (
    <figure class="beds">
      <figcaption>{caption}</figcaption>
      {raw(svg)}
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
    </figure>
  );
}
