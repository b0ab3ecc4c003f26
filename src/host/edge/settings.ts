/**
 * What a deployment says of itself: `code` tells one deploy from the next, and one address of links from another; `epoch` is
 * part of every validator; `origin` is where links in events lead, null for the address a garden was last published at.
 */
export type Settings = {
  readonly code: string;
  readonly epoch: string;
  readonly origin: string | null;
};

/** The settings in the platform's bindings. Throws for an address that is none. */
export function settingsOf({
  VERSION,
  ORIGIN,
  EPOCH,
}: Pick<Bindings, "VERSION" | "ORIGIN" | "EPOCH">): Settings {
  const origin = ORIGIN ? new URL(ORIGIN).origin : null;
  return { code: `${VERSION.id} ${origin ?? ""}`.trim(), epoch: EPOCH ?? "0", origin };
}
