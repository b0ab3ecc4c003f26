/**
 * What a deployment says of itself: `code` tells one deploy from the next, and one address of links from another; `epoch` is
 * part of every validator; `origin` is where links in events lead, null for the address a garden was last published at;
 * `contact` is how weather services can reach who runs this, null where they did not say.
 */
export type Settings = {
  readonly code: string;
  readonly epoch: string;
  readonly origin: string | null;
  readonly contact: string | null;
};

/** The settings in the platform's bindings. Throws for an address that is none. */
export function settingsOf({
  VERSION,
  ORIGIN,
  EPOCH,
  CONTACT,
}: Pick<Bindings, "VERSION" | "ORIGIN" | "EPOCH" | "CONTACT">): Settings {
  const origin = ORIGIN ? new URL(ORIGIN).origin : null;
  const code = `${VERSION.id} ${origin ?? ""}`.trim();
  return { code, epoch: EPOCH ?? "0", origin, contact: CONTACT ?? origin };
}
