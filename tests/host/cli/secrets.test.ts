import { chmodSync, mkdtempSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { addBinding, bindingsIn, othersCanRead, secretIn } from "../../../src/host/cli/secrets.ts";

let file = "";
beforeEach(() => {
  file = join(mkdtempSync(join(tmpdir(), "sowbell-secrets-")), ".dev.vars");
});
const write = (text: string) => writeFileSync(file, text);

describe("a file of secrets", () => {
  test("binds names to values, quotes left out, whatever its line ends", () => {
    write('SECRET="a=b c"\r\nEPOCH=2\nEMPTY=\n\nno line of it\n');
    expect(bindingsIn(file)).toEqual({ SECRET: "a=b c", EPOCH: "2", EMPTY: "" });
  });

  test.each([
    ["without a last newline", "SECRET=abc"],
    ["with spaces", "  SECRET = abc  \n"],
    ["with quotes", "SECRET='abc'\n"],
    ["with a comment behind it", 'SECRET="abc" # keep it\n'],
    ["with a comment behind a bare value", "SECRET=abc # keep it\n"],
    ["with comments and blank lines about", "# Ours\n\nSECRET=abc\n# SECRET=old\n"],
    ["exported", "export SECRET=abc\n"],
    ["with a mark of its encoding", "\uFEFFSECRET=abc\n"],
    ["said twice, the last counts", "SECRET=old\nSECRET=abc\n"],
  ])("has its secret %s", (_, text) => {
    write(text);
    expect(secretIn(file)).toBe("abc");
  });

  test("has none where it is missing, empty or only in a comment", () => {
    expect(secretIn(file)).toBeNull();
    for (const text of ["", "SECRET=\n", 'SECRET=""\n', "# SECRET=abc\n", "SECRETS=abc\n"]) {
      write(text);
      expect(secretIn(file), text).toBeNull();
    }
  });
});

test("a line is added on a line of its own, also behind one without a newline", () => {
  addBinding(file, "SECRET", "abc");
  expect(readFileSync(file, "utf8")).toBe("SECRET=abc\n");
  expect(statSync(file).mode & 0o077).toBe(0);
  write("EPOCH=2");
  addBinding(file, "SECRET", "abc");
  expect(bindingsIn(file)).toEqual({ EPOCH: "2", SECRET: "abc" });
});

test("a file that others can read is told, with what ends it", () => {
  expect(othersCanRead(file)).toBeNull();
  addBinding(file, "SECRET", "abc");
  expect(othersCanRead(file)).toBeNull();
  chmodSync(file, 0o644);
  expect(othersCanRead(file)).toContain(`chmod 600 ${file}`);
});
