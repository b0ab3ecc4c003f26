/**
 * What a link lets its holder do. An admin holds the deployment's own key: it brings plans in and makes gardens. An
 * invitation makes its one garden.
 */
export type Role = (typeof ROLES)[number];

/**
 * What a link says. `person` is the key of the helper whose own link it is; null for the household's, and for every
 * other role.
 * `serial` counts from 1; a lost link is revoked and the next serial takes its place.
 */
export type Link = {
  readonly garden: string;
  readonly role: Role;
  readonly person: string | null;
  readonly serial: number;
};

/** Every role there is. */
export const ROLES = ["owner", "helper", "reader", "admin", "invitation"] as const;
const PLAIN = /^[A-Za-z0-9_-]$/;

/**
 * A name as one part of a path: ASCII letters, digits, `-` and `_` stand for themselves, every other character is
 * `~` and its code point in hex and `~`. Nothing is left for a client to escape its own way, so a path has one spelling.
 */
export function encodePathPart(name: string): string {
  return [...name].map((c) => (PLAIN.test(c) ? c : `~${codeOf(c)}~`)).join("");
}

function codeOf(character: string): string {
  return (character.codePointAt(0) ?? 0).toString(16);
}

/** The name a part of a path stands for; null where the part is empty or is not the one spelling of a name. */
export function decodePathPart(part: string): string | null {
  if (!/^(?:[A-Za-z0-9_-]|~[0-9a-f]{1,6}~)+$/.test(part)) return null;
  const name = part.replace(/~([0-9a-f]+)~/g, (_, hex: string) => characterOf(hex));
  return encodePathPart(name) === part ? name : null;
}

function characterOf(hex: string): string {
  const code = Number.parseInt(hex, 16);
  return code <= 0x10ffff ? String.fromCodePoint(code) : "";
}

/**
 * A link's part of the path: `owner-1`, `helper-imre-1`, `helper-1` for the household, `reader-2`. Up to the first hyphen it is the role and from
 * the last one the serial, so that hyphens in a person's key are no trouble.
 */
export function writeSegment(link: Omit<Link, "garden">): string {
  const person = link.person === null ? "" : `-${encodePathPart(link.person)}`;
  return `${link.role}${person}-${link.serial}`;
}

/** What such a part says for a garden; null where it is not the one spelling of a link, or a role has a person it can't have. */
export function readSegment(garden: string, segment: string): Link | null {
  const found = /^([a-z]+)(?:-(.+))?-([1-9][0-9]{0,5})$/.exec(segment);
  const role = ROLES.find((known) => known === found?.[1]);
  if (!found || !role) return null;
  const person = found[2] === undefined ? null : decodePathPart(found[2]);
  if (found[2] !== undefined && (role !== "helper" || person === null)) return null;
  return { garden, role, person, serial: Number(found[3]) };
}
