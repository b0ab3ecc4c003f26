import { renderPage } from "./frame.tsx";
import { Qr } from "./qr.tsx";

/** The page that takes the phrase of a shut-out owner; `wrong` where one was tried that opens nothing. */
export function recoveryPage(wrong: boolean): string {
  return renderPage({
    title: "Your own link is lost",
    frame: null,
    children: (
      <>
        <p>
          Whoever keeps a garden's recovery phrase gets a new owner's link here. Every other owner's
          link is closed by it. Without the phrase, ask whoever runs this Sowbell.
        </p>
        {wrong && <p role="alert">That phrase opens nothing. Look at each letter again.</p>}
        <form method="post" class="rows">
          <label for="garden">The garden, as the phrase's page names it</label>
          <input id="garden" name="garden" autocapitalize="none" autocomplete="off" required />
          <label for="phrase">The phrase, six groups of four letters</label>
          <input
            class="wide"
            id="phrase"
            name="phrase"
            autocapitalize="none"
            autocomplete="off"
            required
          />
          <button type="submit">Get a new link</button>
        </form>
      </>
    ),
  });
}

/** A phrase, the one time it is shown, with the garden's id that it goes with. */
export function Phrase({ garden, phrase }: { readonly garden: string; readonly phrase: string }) {
  return (
    <section aria-labelledby="phrase">
      <h2 id="phrase">Write this down</h2>
      <p>
        If the owner's link is ever lost, or somebody else shuts you out with it, this phrase brings
        you back, at the address of this site with /recover behind it. It is shown this once. Keep
        it on paper.
      </p>
      <p>
        The garden: <code>{garden}</code>
        <br />
        The phrase: <code>{phrase}</code>
      </p>
    </section>
  );
}

/** The new owner's link, and the phrase that takes the place of the one just used. */
export function recoveredPage({
  garden,
  address,
  phrase,
}: {
  readonly garden: string;
  readonly address: string;
  readonly phrase: string;
}): string {
  return renderPage({
    title: "Your new link",
    frame: null,
    children: (
      <>
        <p>
          <code>{address}</code>
        </p>
        <Qr address={address} says="The same address as a code for a camera" />
        <p>
          It opens everything in the garden, and every other owner's link is closed. The phrase you
          used is used up.
        </p>
        <p>
          <a class="do" href={address}>
            Open it here
          </a>
        </p>
        <Phrase garden={garden} phrase={phrase} />
      </>
    ),
  });
}
