import { html, raw } from "hono/html";
import type { Child } from "hono/jsx";
import { BAR_STYLE } from "../style/bar.ts";
import { PAPER } from "../style/colours.ts";

/** A garden's own page and where else its link leads, as the bar at the foot of every page under the link has it. */
export type Frame = {
  readonly garden: string;
  /** The link's path, with its closing slash. */
  readonly base: string;
  /** The places in the bar, five at the most: names, and what follows the link. */
  readonly ways: readonly NavLink[];
};

/** One way on: its name and its path under the link. */
export type NavLink = { readonly name: string; readonly path: string };

/**
 * A page and what it shows; `frame` null for a page that belongs to no garden; `place` the path of the bar's place that it
 * belongs to, `more` where none is said; `under` a line below the title; `script` a script of ours that it can do without.
 */
export type PageDocument = {
  readonly title: string;
  readonly frame: Frame | null;
  readonly place?: string;
  readonly under?: string;
  readonly script?: string;
  readonly children: Child;
};

/** Where the pages' icon is served, and what Apple's home screens ask for. */
export const [ICON, APPLE_ICON] = ["/icon.svg", "/icon-180.png"] as const;

/** Where the script of every page under a link is served. */
export const PAGE_SCRIPT = "/page.js";

/** What a home screen asks for, under the link. */
export const MANIFEST = "app.webmanifest";

/** The place of every page that the bar does not name. */
export const MORE = "more";

/**
 * A whole document: a head with the garden's name over the title, its one first heading; what it shows; and the bar at the
 * foot. On the garden's own page, whose title is the garden's name, the head is the name and the line below it.
 */
export function renderPage(shown: PageDocument): string {
  const { title, frame, place = MORE, under, script, children } = shown;
  const own = frame === null || frame.garden === title;
  const page = (
    <html lang="en">
      <head>{headOf(own ? title : `${title}, ${frame.garden}`, frame, script)}</head>
      <body>
        <main>
          <header class={own && under !== undefined ? "top own" : "top"}>
            {!own && <p>{frame.garden}</p>}
            <h1>{title}</h1>
            {under !== undefined && <p>{under}</p>}
          </header>
          {children}
        </main>
        {frame && <Bar frame={frame} place={place} />}
      </body>
    </html>
  );
  return `<!doctype html>${page}`;
}

/** What stands in a head, as text: the writer holds such elements back and puts them in place in the finished page, one by one. */
function headOf(title: string, frame: Frame | null, script: string | undefined): Child {
  const scripted = script === undefined ? "" : html`<script src="${script}" defer=""></script>`;
  const own = frame === null ? "" : ownHead(frame);
  return html`${HEAD}<title>${title}</title>${LOOKS}${own}${scripted}`;
}

/** What a link's pages bring along: how a home screen shows them, and the script that they can do without. */
function ownHead({ base }: Frame): Child {
  return html`<link rel="manifest" href="${base}${MANIFEST}"/><script src="${PAGE_SCRIPT}" data-base="${base}" defer=""></script>`;
}

const HEAD = raw(
  '<meta charset="utf-8"/><meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover"/>',
);
const LOOKS = raw(
  [
    `<link rel="icon" href="${ICON}"/><link rel="apple-touch-icon" href="${APPLE_ICON}"/><link rel="stylesheet" href="/paper.css"/>`,
    ...(["light", "dark"] as const).map(
      (light) =>
        `<meta name="theme-color" media="(prefers-color-scheme: ${light})" content="${PAPER[light]}"/>`,
    ),
  ].join(""),
);

/** The bar at the foot; the place one is at is marked. */
function Bar({ frame, place }: { readonly frame: Frame; readonly place: string }) {
  const { garden, base, ways } = frame;
  return (
    <nav class="bar" aria-label={garden}>
      <ul>
        {ways.map(({ name, path }) => (
          <li>
            <a href={`${base}${path}`} aria-current={path === place ? "true" : undefined}>
              {name}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** A sheet to be printed, with the bar under what its screen shows; the paper stays as it is. */
export function withBar(sheet: string, frame: Frame): string {
  const bar = html`<style>${raw(BAR_STYLE)}</style>${<Bar frame={frame} place={MORE} />}`;
  return sheet.replace("</body>", () => `${bar}</body>`);
}
