/**
 * A name as it stands in keys: lower case, letters and digits of any script, hyphens between. Empty where the name
 * has neither letter nor digit. Two names of one slug are one name.
 */
export function slug(name: string): string {
  return name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "");
}
