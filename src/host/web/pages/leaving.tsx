import { type Frame, renderPage } from "./frame.tsx";

/**
 * What the page shows: the archive's name; `wrong` where another name was typed than the garden's; whether the garden was just restored;
 * why it was not, a line each.
 */
export type LeavingPageProps = {
  readonly file: string;
  readonly wrong: boolean;
  readonly restored: boolean;
  readonly notRestored: readonly string[];
};

/** The page for taking a garden along, bringing it back, or ending it. */
export function leavingPage(
  frame: Frame,
  { file, wrong, restored, notRestored }: LeavingPageProps,
): string {
  return renderPage({
    title: "Download or delete",
    frame,
    children: (
      <>
        {restored && <p role="status">The garden is as its archive has it.</p>}
        <p>
          Plans with all their versions, the diary and the calendars as they stand, as files in one
          archive. Links are left out of it. From the archive the garden can be made again, here or
          anywhere, and its calendars go on with the same events.
        </p>
        <p>
          <a class="do" href={file} download={file}>
            Download everything
          </a>
        </p>
        <h2>Bring an archive back</h2>
        <p>
          This puts an archive in the place of all that is here now: plans, diary and answers. Links
          and calendars stay. Download what is here first.
        </p>
        {notRestored.length > 0 && (
          <div role="alert" id="not-restored">
            <p>Nothing was changed. The archive can't be used:</p>
            <ul>
              {notRestored.map((line) => (
                <li>{line}</li>
              ))}
            </ul>
          </div>
        )}
        <form method="post" action={`${frame.base}restore`} enctype="multipart/form-data">
          <label for="archive">The archive, a .zip file</label>
          <input class="wide" id="archive" name="archive" type="file" accept=".zip" required />
          <label for="over">To be sure, type the garden's name: {frame.garden}</label>
          <input id="over" name="name" autocomplete="off" required />
          <button type="submit" class="end">
            Put the archive in the place of this garden
          </button>
        </form>
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
