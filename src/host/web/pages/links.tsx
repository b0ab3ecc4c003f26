import { AskFirst } from "./ask.tsx";
import { type Frame, renderPage } from "./frame.tsx";
import { Qr } from "./qr.tsx";
import { Phrase } from "./recovery.tsx";

/** A link as its owner sees it: whose it is, its part of the path (`helper-imre-1`), and whether a calendar uses it. */
export type LinkEntry = { readonly name: string; readonly segment: string; readonly used: boolean };

/** A link that was revoked: its part of the path and the day, in words. */
export type RevokedLink = { readonly segment: string; readonly day: string };

/** What the page of links shows: those in use, those of nobody in the plan, whether another owner's link opens too, those revoked, and the one just now. */
export type LinksPageProps = {
  readonly rows: readonly LinkEntry[];
  readonly strays: readonly LinkEntry[];
  readonly others: boolean;
  /** The day on which the garden's recovery phrase was made, in words; null: it has none. */
  readonly recovery: string | null;
  readonly revoked: readonly RevokedLink[];
  readonly done: string | null;
};

/** Every link that is in use, each with a way to show it and one to revoke it, and an owner's own. */
export function linksPage(
  frame: Frame,
  { rows, strays, others, recovery, revoked, done }: LinksPageProps,
): string {
  return renderPage({
    title: "Links to hand on",
    frame,
    children: (
      <>
        {done !== null && <p role="status">{done} is revoked. What it had opens no more.</p>}
        <p>
          Each person has a link of their own. It opens their jobs and their calendar, and answers
          are written down in their name. A link stands on no page: show it when you hand it on. One
          that is revoked is closed at once, and the next takes its place here.
        </p>
        <h2>In use</h2>
        {rows.map((row) => (
          <LinkRow row={row} shows />
        ))}
        {strays.length > 0 && <h2>Of nobody in the plan any more</h2>}
        {strays.map((row) => (
          <LinkRow row={row} shows={false} />
        ))}
        <h2>Your own</h2>
        <p>
          The link you are here by opens everything: the plan, these links, the garden's end. Keep
          it out of calendars and to yourself. If it may be in other hands, show the next one, open
          it, and close every other from there.
        </p>
        <form method="post">
          <button type="submit" name="do" value="next">
            Show my next link
          </button>
          {others && (
            <AskFirst what="Close every other owner's link">
              <p>
                Only the link you are here by opens as the owner's from then on. Have you kept it
                somewhere safe?
              </p>
              <button type="submit" class="end" name="do" value="close">
                Yes, close every other
              </button>
            </AskFirst>
          )}
        </form>
        <h2>Your way back</h2>
        <form method="post">
          {recovery === null ? (
            <p>
              The garden has no recovery phrase yet. With one on paper you get in again when your
              link is lost, or when somebody who has it shuts you out.
            </p>
          ) : (
            <p>
              A recovery phrase was made on {recovery}. To have another in its place, type it here.
            </p>
          )}
          {recovery !== null && <label for="phrase">The phrase you have</label>}
          {recovery !== null && (
            <input
              class="wide"
              id="phrase"
              name="phrase"
              autocapitalize="none"
              autocomplete="off"
            />
          )}
          <button type="submit" name="do" value="phrase">
            {recovery === null ? "Make a recovery phrase" : "Make another phrase"}
          </button>
        </form>
        {revoked.length > 0 && <h2>Revoked</h2>}
        {revoked.length > 0 && (
          <ul>
            {revoked.map(({ segment, day }) => (
              <li>
                {segment}, {day}
              </li>
            ))}
          </ul>
        )}
      </>
    ),
  });
}

function LinkRow({
  row: { name, segment, used },
  shows,
}: {
  readonly row: LinkEntry;
  readonly shows: boolean;
}) {
  return (
    <form method="post" aria-label={name}>
      <h3>{name}</h3>
      <p class="faint">{used ? "A calendar uses it." : "No calendar uses it yet."}</p>
      <input type="hidden" name="link" value={segment} />
      {shows && (
        <button type="submit" name="do" value="show">
          Show the link<span class="unseen"> of {name}</span>
        </button>
      )}
      <AskFirst
        what={
          <>
            Revoke it<span class="unseen">, the link of {name}</span>
          </>
        }
      >
        <p>
          Whoever has this link is shut out at once, and its calendars get no more news. A new link
          takes its place here.
        </p>
        <button type="submit" class="end" name="do" value="revoke">
          Yes, revoke it<span class="unseen">, the link of {name}</span>
        </button>
      </AskFirst>
    </form>
  );
}

/** The garden's recovery phrase, the one time it is shown. */
export function phrasePage(frame: Frame, garden: string, phrase: string): string {
  return renderPage({
    title: "Your recovery phrase",
    frame,
    children: <Phrase garden={garden} phrase={phrase} />,
  });
}

/** A link shown: whose it is, its address, and the feed it is for, null where it is an owner's. */
export type LinkPageProps = {
  readonly name: string;
  readonly address: string;
  readonly feed: string | null;
  /** The garden's id and its recovery phrase, where that was just made. */
  readonly recovery?: { readonly garden: string; readonly phrase: string };
};

/** One link as text and as a code for a camera. */
export function linkPage(
  frame: Frame | null,
  { name, address, feed, recovery }: LinkPageProps,
): string {
  return renderPage({
    title: name,
    frame,
    children: (
      <>
        <p>
          <code>{address}</code>
        </p>
        <Qr address={address} says="The same address as a code for a camera" />
        <p>
          {feed === null
            ? "It opens everything in the garden, so keep it to yourself, and keep it well: a bookmark, a password store, a slip of paper in a drawer. Another device's camera can look at the code."
            : "Send it, or let the other phone's camera look at the code. It opens what is to be done today, and leads from there into that phone's calendar."}
        </p>
        <p>
          <a class="do" href={address}>
            Open it here
          </a>
        </p>
        {feed !== null && (
          <p class="faint">
            The calendar alone: <code>{feed}</code>
          </p>
        )}
        {recovery && <Phrase {...recovery} />}
      </>
    ),
  });
}
