import { ANSWERED, isAnswered, packages } from "./licences.ts";

/*
 * `npm run -s licences` lists the packages by licence, those that a host needs first, and exits 1 where one is not answered.
 * `npm run -s sbom` writes the software bill of materials of a host as SPDX.
 */

const all = packages();
for (const isNeeded of [true, false]) {
  const some = all.filter((each) => each.isNeeded === isNeeded);
  console.log(`${isNeeded ? "A host needs" : "For developers alone"}: ${some.length} packages`);
  for (const licence of [...new Set(some.map((each) => each.licence))].sort()) {
    const names = some
      .filter((each) => each.licence === licence)
      .map(({ name, version }) => `${name} ${version}`);
    const shown = isNeeded || names.length < 9 ? names.join(", ") : `${names.length} packages`;
    console.log(`  ${licence || "none stated"}: ${shown}`);
  }
}
for (const [licence, why] of Object.entries(ANSWERED)) console.log(`${licence}: ${why}.`);
process.exitCode = all.every(isAnswered) ? 0 : 1;
