import { renderPage } from "./frame.tsx";

const TITLES: Readonly<Record<number, string>> = {
  403: "Not from there",
  404: "Nothing here",
  405: "Not that way",
  429: "Too often",
  503: "Not just now",
};

/** What a person sees in place of a short line of text: what it is, the line, and what may be done. Names no garden. */
export function troublePage(status: number, line: string): string {
  const title = TITLES[status] ?? "That did not work";
  return renderPage({
    title,
    frame: null,
    children: (
      <>
        <p class="lead">{line.replace(`${title}. `, "")}</p>
        {status === 404 && (
          <p>
            A link is one long address. If part of it is missing, open it again from where you got
            it, or ask whoever keeps the garden for a new one.
          </p>
        )}
        {status === 503 && <p>Your calendars keep what they have and ask again by themselves.</p>}
      </>
    ),
  });
}
