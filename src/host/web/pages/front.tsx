import { renderPage } from "./frame.tsx";

/** The front page: what this is, and no garden's name. */
export function frontPage(): string {
  return renderPage({
    title: "Sowbell",
    frame: null,
    children: (
      <>
        <p class="lead">
          Sowbell rings for the garden: it turns a garden's plan into a calendar that says what to
          do next, and moves when the season does.
        </p>
        <p>
          Each garden has its own private links. If somebody keeps the plan of yours, ask them for
          your link; it opens what is to be done today. Whoever has an invitation begins a garden
          with it.
        </p>
      </>
    ),
  });
}
