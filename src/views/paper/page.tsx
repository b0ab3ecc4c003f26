/** @jsxRuntime automatic @jsxImportSource hono/jsx */
import { raw } from "hono/html";
import type { Child } from "hono/jsx";
import { plainText } from "../pictures/svg.ts";
import { SHEET_STYLE } from "./style.ts";

/** A sheet's title, as plain text, and what stands on it. */
export type SheetDocument = { readonly title: string; readonly children: Child };

/**
 * A whole page of HTML that is well-formed as XML too: one file, no script, nothing fetched, its style inside. No
 * character of a name gets into it that XML does not allow or that turns the direction of what follows.
 */
export function renderSheet({ title, children }: SheetDocument): string {
  const page = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="robots" content="noindex" />
        <title>{title}</title>
        <style>{raw(SHEET_STYLE)}</style>
      </head>
      <body>
        <main>{children}</main>
      </body>
    </html>
  );
  return `<!doctype html>\n${plainText(String(page))}\n`;
}

/** Lines ruled to write on. */
export function RuledLines({ count }: { readonly count: number }) {
  return (
    <div class="ruled">
      {Array.from({ length: count }, () => (
        <p />
      ))}
    </div>
  );
}

/** A box to tick, or ticked already. */
export function Box({ ticked }: { readonly ticked: boolean }) {
  return <span class="box">{ticked && "x"}</span>;
}

/** Lines of one look, a paragraph each; an empty one is left out. */
export function Lines({
  look,
  lines,
}: {
  readonly look: string;
  readonly lines: readonly string[];
}) {
  return (
    <>
      {lines
        .filter((line) => line !== "")
        .map((line) => (
          <p class={look}>{line}</p>
        ))}
    </>
  );
}
