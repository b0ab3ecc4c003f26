import type { Child } from "hono/jsx";
import { renderPage } from "./frame.tsx";
import { Qr } from "./qr.tsx";
import { Phrase } from "./recovery.tsx";

/** Where the script is served that copies and shares an address. */
export const SHARE_SCRIPT = "/share.js";

/** A link to hand on: whose it is and its address. */
export type HandedLink = { readonly name: string; readonly address: string };

/** A garden just made: its name, its owner's address, everybody's own, and its plan's text. */
export type ReadyPageProps = {
  readonly garden: string;
  readonly owner: string;
  readonly recovery: { readonly garden: string; readonly phrase: string };
  readonly links: readonly HandedLink[];
  readonly text: string;
};

/** The garden is there: the link to keep, and each person's to hand on or to put into a calendar. */
export function readyPage({ garden, owner, recovery, links, text }: ReadyPageProps): string {
  return renderPage({
    title: `${garden} is ready`,
    frame: null,
    script: SHARE_SCRIPT,
    children: (
      <>
        <h2>Your own link: keep it</h2>
        <p>
          It opens everything in the garden; there is no name and no password. Keep it as a bookmark
          or in a password store, keep it to yourself, and put it in no calendar.
        </p>
        <LinkToHand name="your own link" address={owner}>
          <a class="do" href={owner}>
            Open the garden
          </a>
        </LinkToHand>
        <Phrase {...recovery} />
        <h2>The calendars</h2>
        <p>
          One link for each of you. It opens today's jobs, and puts them into that phone's own
          calendar.
        </p>
        {links.map(({ name, address }) => (
          <section>
            <h3>{name}</h3>
            <LinkToHand name={`the link of ${name}`} address={address}>
              <a class="do fill" href={`${address}calendar`}>
                Put it in my calendar<span class="unseen"> for {name}</span>
              </a>
            </LinkToHand>
          </section>
        ))}
        <details>
          <summary>The plan as text</summary>
          <pre tabindex={0}>{text}</pre>
        </details>
      </>
    ),
  });
}

/** An address as text, with the ways on, and as a code for a camera; copying and sharing only where scripts run. */
function LinkToHand({ name, address, children }: HandedLink & { readonly children: Child }) {
  return (
    <>
      <p>
        <code>{address}</code>
      </p>
      <p class="onward">
        {children}
        <button type="button" hidden data-copy={address}>
          Copy<span class="unseen"> {name}</span>
        </button>
        <button type="button" hidden data-share={address}>
          Share<span class="unseen"> {name}</span>
        </button>
        <span role="status" />
      </p>
      <details>
        <summary>
          As a code for a camera<span class="unseen">: {name}</span>
        </summary>
        <Qr address={address} says="The same address as a code for a camera" />
      </details>
    </>
  );
}
