import { renderPage } from "./frame.tsx";

/** Why an archive made no garden, a line each, and what to do. */
export function notRestoredPage(why: readonly string[]): string {
  return renderPage({
    title: "Not restored",
    frame: null,
    children: (
      <>
        <p role="alert">Nothing was stored. The archive can't be used:</p>
        <ul>
          {why.map((line) => (
            <li>{line}</li>
          ))}
        </ul>
        <p>Go back and choose another copy of it.</p>
      </>
    ),
  });
}
