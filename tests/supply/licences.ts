import { readFileSync } from "node:fs";

/** A package that is installed: its name, version and licence as it states it, and whether a host needs it. */
export type Package = {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly isNeeded: boolean;
};

/**
 * Licences that ask for no more than to be named, so that a host and whoever changes it is free. Source: SPDX License List, by their
 * identifiers.
 */
export const FREE: readonly string[] = [
  ...["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "Apache-2.0", "Unlicense", "CC0-1.0"],
  ...["BlueOak-1.0.0", "Python-2.0", "Zlib"],
];

/**
 * What has another licence, and why it may be here. Those that a host does not need are tools on the developer's machine alone.
 */
export const ANSWERED: Readonly<Record<string, string>> = {
  "MPL-2.0":
    "changed files of it would have to be open; none is changed, and it is used as it comes",
  "LGPL-3.0-or-later":
    "a library for images that wrangler brings along, loaded as it comes; never in the worker",
};

/** Packages that state no licence where npm looks for it, and the one in their licence file. */
const BY_FILE: Readonly<Record<string, string>> = { "suncalc 2.0.2": "BSD-2-Clause" };

/** Every package of the lock file, in the order of their names. */
export function packages(
  lock: URL = new URL("../../package-lock.json", import.meta.url),
): readonly Package[] {
  type Entry = {
    readonly version?: string;
    readonly license?: string;
    readonly dev?: boolean;
    readonly devOptional?: boolean;
    readonly optional?: boolean;
  };
  const { packages: all } = JSON.parse(readFileSync(lock, "utf8")) as {
    readonly packages: Readonly<Record<string, Entry>>;
  };
  return Object.entries(all)
    .filter(([path]) => path !== "")
    .map(([path, { version = "", license, dev, devOptional, optional }]) => {
      const name = path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length);
      const licence = license ?? BY_FILE[`${name} ${version}`] ?? "";
      return { name, version, licence, isNeeded: !dev && !devOptional && !optional };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** The licences that a package offers; of several it may be used under any. */
export function licencesOf({ licence }: Pick<Package, "licence">): readonly string[] {
  return licence.replaceAll(/[()]/g, "").split(/ OR /);
}

/** Whether a package may be used: under a free licence, each of those that hold together, or one that is answered. */
export function isAnswered(used: Pick<Package, "licence">): boolean {
  return licencesOf(used).some((offered) =>
    offered.split(" AND ").every((one) => FREE.includes(one) || one in ANSWERED),
  );
}
