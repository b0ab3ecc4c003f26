import { renderPage } from "./frame.tsx";

/** The front page: what this is, and no garden's name. */
export function frontPage(): string {
  return renderPage({
    title: "Sowbell",
    frame: null,
    children: (
      <p>
        Sowbell rings for the garden: it turns a garden's plan into a calendar that says what to do
        next, and moves when the season does. Each garden has its own private links; whoever keeps
        the plan can give you yours.
      </p>
    ),
  });
}
