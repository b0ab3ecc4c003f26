import { type Frame, renderPage } from "./frame.tsx";

/** The page for taking a garden along or ending it; `wrong` where another name was typed than the garden's. */
export function leavingPage(
  frame: Frame,
  { file, wrong }: { file: string; wrong: boolean },
): string {
  return renderPage({
    title: "Download or delete",
    frame,
    children: (
      <>
        <p>
          Plans with all their versions, the diary and the calendars as they stand, as files in one
          archive. Links are left out of it. The plans can be brought in again anywhere; the diary's
          answers are a table to read.
        </p>
        <p>
          <a class="do" href={file} download={file}>
            Download everything
          </a>
        </p>
        <h2>Delete this garden</h2>
        <p>
          This deletes the garden for good: plans, diary, calendars and links. Calendars keep what
          they last had. Nobody can bring it back, so download everything first.
        </p>
        <form method="post">
          <label for="name">To be sure, type the garden's name: {frame.garden}</label>
          <input
            id="name"
            name="name"
            autocomplete="off"
            required
            aria-describedby={wrong ? "wrong" : undefined}
            aria-invalid={wrong ? "true" : undefined}
          />
          <button type="submit" class="end">
            Delete this garden for good
          </button>
        </form>
        {wrong && (
          <p id="wrong" role="alert">
            That is another name. Nothing was deleted.
          </p>
        )}
      </>
    ),
  });
}

/** What is left to say where a garden was. */
export function endedPage(name: string): string {
  return renderPage({
    title: `${name} is deleted`,
    frame: null,
    children: (
      <p>
        Nothing of it is kept but the mark that it is gone. Remove its calendars from the phones;
        they ask in vain from now on.
      </p>
    ),
  });
}
