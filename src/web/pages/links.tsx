import { type Frame, sheet } from "./frame.tsx";
import { Qr } from "./qr.tsx";

/** A link as its owner sees it: whose it is, its part of the path (`helper-imre-1`), and whether a calendar has asked with it. */
export type Row = { readonly name: string; readonly segment: string; readonly used: boolean };

/** A link that was revoked: its part of the path and the day, in words. */
export type Revoked = { readonly segment: string; readonly day: string };

/** What the page of links shows: those in use, an owner's older ones, those of nobody in the plan, and those revoked. */
export type Links = {
  readonly rows: readonly Row[];
  readonly older: readonly Row[];
  readonly strays: readonly Row[];
  readonly next: string;
  readonly revoked: readonly Revoked[];
};

/** Every link that is in use, each with a way to show it and one to revoke it. */
export function linksPage(frame: Frame, { rows, older, strays, next, revoked }: Links): string {
  return sheet({
    title: "Links to hand on",
    frame,
    children: (
      <>
        <p>
          Each person has a link of their own. It opens their jobs and their calendar, and answers
          are written down in their name. A link stands on no page: show it when you hand it on.
        </p>
        <h2>In use</h2>
        {rows.map((row) => (
          <LinkRow row={row} />
        ))}
        {strays.length > 0 && <h2>Of nobody in the plan</h2>}
        {strays.map((row) => (
          <LinkRow row={row} />
        ))}
        <h2>Your own</h2>
        <p>
          The link you are here by opens everything: the plan, these links, the garden's end. Keep
          it out of calendars and to yourself. If it may be in other hands, show the next one, open
          it, and revoke this one from there.
        </p>
        <form method="post">
          <input type="hidden" name="link" value={next} />
          <button type="submit" name="do" value="show">
            Show my next link
          </button>
        </form>
        {older.map((row) => (
          <LinkRow row={row} />
        ))}
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

function LinkRow({ row: { name, segment, used } }: { readonly row: Row }) {
  return (
    <form method="post" aria-label={name}>
      <h3>{name}</h3>
      <p class="faint">
        {used ? "A calendar has asked with it." : "No calendar has asked with it yet."}
      </p>
      <input type="hidden" name="link" value={segment} />
      <button type="submit" name="do" value="show">
        Show the link<span class="unseen"> of {name}</span>
      </button>
      <button type="submit" name="do" value="revoke">
        Revoke it<span class="unseen">, the link of {name}</span>
      </button>
    </form>
  );
}

/** A link shown: whose it is, its address, and the feed it is for, null where it is an owner's. */
export type Shown = {
  readonly name: string;
  readonly address: string;
  readonly feed: string | null;
};

/** One link as text and as a code for a camera. */
export function linkPage(frame: Frame | null, { name, address, feed }: Shown): string {
  return sheet({
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
            : "Send it, or let the other phone's camera look at the code. It opens a page that puts the jobs into that phone's calendar."}
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
      </>
    ),
  });
}
