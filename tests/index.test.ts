import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { expect, test } from "vitest";

/** The README's example of the core as a library. */
const EXAMPLE = /## As a library\n[\s\S]*?```ts\n(?<code>[\s\S]*?)```/.exec(
  readFileSync("README.md", "utf8"),
)?.groups?.code;

test("the README's example of the library prints a person's calendar", async () => {
  const folder = mkdtempSync(join(tmpdir(), "sowbell-example-"));
  const file = join(folder, "example.mts");
  const here = pathToFileURL(`${process.cwd()}/src/`).href;
  writeFileSync(file, (EXAMPLE ?? "").replaceAll("./src/", here));
  try {
    const tsx = join(process.cwd(), "node_modules/.bin/tsx");
    const { stdout } = await promisify(execFile)(tsx, [file]);
    expect(stdout).toMatch(/^BEGIN:VCALENDAR\r\n/);
    expect(stdout).toContain("\r\nNAME:Quarry Lane: Imre\r\n");
    expect(stdout.trimEnd()).toMatch(/END:VCALENDAR$/);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
