import { type Frame, MORE, type NavLink, renderPage } from "./frame.tsx";

/** Somewhere the link leads to besides the bar's places, with what one finds there. */
export type MoreLink = NavLink & { readonly says: string };

/** Everything else that a link leads to, each with a line of what it is for. */
export function morePage(frame: Frame, links: readonly MoreLink[]): string {
  return renderPage({
    title: "More",
    frame,
    place: MORE,
    children: (
      <ul class="list">
        {links.map(({ name, path, says }) => (
          <li>
            <a href={`${frame.base}${path}`}>{name}</a>
            <p class="faint">{says}</p>
          </li>
        ))}
      </ul>
    ),
  });
}
