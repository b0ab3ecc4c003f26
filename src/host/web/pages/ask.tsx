import type { Child } from "hono/jsx";

/** What is about to be taken away (`what`, as on a button), and the button that does it, among whatever has to be said before. */
export type AskFirstProps = {
  readonly what: Child;
  readonly children: Child;
};

/**
 * A fold that looks like what it leads to and asks once more, without script: its words say what would be taken away, and
 * only the button inside does it. That button has the class `end`.
 */
export function AskFirst({ what, children }: AskFirstProps) {
  return (
    <details class="ask">
      <summary>{what}</summary>
      {children}
    </details>
  );
}
