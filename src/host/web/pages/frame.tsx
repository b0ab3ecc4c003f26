import { html, raw } from "hono/html";
import type { Child } from "hono/jsx";

/** A garden's own page and where else its link leads, as every page under the link shows them at its foot. */
export type Frame = {
  readonly garden: string;
  /** The link's path, with its closing slash. */
  readonly base: string;
  /** What it leads to besides: names, and what follows the link. */
  readonly ways: readonly NavLink[];
};

/** One way on: its name and its path under the link. */
export type NavLink = { readonly name: string; readonly path: string };

/** A page and what it shows; `frame` null for a page that belongs to no garden; `script` a script of ours that it can do without. */
export type PageDocument = {
  readonly title: string;
  readonly frame: Frame | null;
  readonly script?: string;
  readonly children: Child;
};

/** Where the pages' icon is served. */
export const ICON = "/icon.svg";

/** A whole document: the title as its one first heading, what it shows, and below it the ways on. */
export function renderPage({ title, frame, script, children }: PageDocument): string {
  const named = frame === null || frame.garden === title ? title : `${title}, ${frame.garden}`;
  const page = (
    <html lang="en">
      <head>{headOf(named, script)}</head>
      <body>
        <main>
          <h1>{title}</h1>
          {children}
        </main>
        {frame && <NavLinks frame={frame} />}
      </body>
    </html>
  );
  return `<!doctype html>${page}`;
}

/** What stands in a head, as text: the writer holds such elements back and puts them in place in the finished page, one by one. */
function headOf(title: string, script: string | undefined): Child {
  const scripted = script === undefined ? "" : html`<script src="${script}" defer=""></script>`;
  return html`${HEAD}<title>${title}</title>${LOOKS}${scripted}`;
}

const HEAD = raw(
  '<meta charset="utf-8"/><meta name="viewport" content="width=device-width, initial-scale=1"/>',
);
const LOOKS = raw(`<link rel="icon" href="${ICON}"/><link rel="stylesheet" href="/paper.css"/>`);

function NavLinks({ frame: { garden, base, ways } }: { readonly frame: Frame }) {
  return (
    <nav aria-label={garden}>
      <ul>
        <li>
          <a href={base}>{garden}</a>
        </li>
        {ways.map(({ name, path }) => (
          <li>
            <a href={`${base}${path}`}>{name}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
