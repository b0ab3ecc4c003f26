import { type Frame, renderPage } from "./frame.tsx";

/** What stands for a page where there is no network. The garden's own page may have been kept. */
export function offlinePage(frame: Frame): string {
  return renderPage({
    title: "No network",
    frame,
    children: (
      <>
        <p class="lead">This page can't be reached just now, and nothing was sent.</p>
        <p>
          <a href={frame.base}>The last week you looked at</a> may still be here. What you tapped or
          wrote is not stored: go back and send it again once there is a network.
        </p>
      </>
    ),
  });
}
