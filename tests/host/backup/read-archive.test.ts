import { describe, expect, test } from "vitest";
import { readArchive } from "../../../src/host/backup/read-archive.ts";
import { BadArchive } from "../../../src/host/backup/unpack.ts";
import { filesOf, snapshotOf, zipped } from "./archived.ts";

/** Why an archive is refused. */
function whyNot(bytes: Uint8Array): string {
  try {
    readArchive(bytes);
  } catch (error) {
    if (error instanceof BadArchive) return error.message;
    throw error;
  }
  return "it was read";
}

test("an archive is read, in whichever folder it lies, with files of others beside its own", () => {
  for (const folder of ["weir/", "", "renamed by hand/"]) {
    const { versions } = readArchive(zipped({ ...filesOf(), "notes.txt": "mine" }, folder));
    expect(versions).toMatchObject([{ year: 2027, version: 1, text: "garden: Weir\n" }]);
  }
});

describe("an archive is refused, with the file and the place,", () => {
  const without = (name: string) => {
    const { [name]: _, ...rest } = filesOf();
    return zipped(rest);
  };

  test("where a file of it is missing", () => {
    expect(whyNot(without("garden.json"))).toBe("garden.json is missing");
    expect(whyNot(without("versions/2027-1.yaml"))).toBe("versions/2027-1.yaml is missing");
    expect(whyNot(without("SHA256SUMS"))).toBe(
      "there is no SHA256SUMS in it, so it was not made by this Sowbell",
    );
  });

  test("where one was changed since", () => {
    const files = { ...filesOf(), "versions/2027-1.yaml": "garden: Other\n" };
    expect(whyNot(zipped(files))).toBe(
      "versions/2027-1.yaml is not what its check sum in SHA256SUMS says: damaged, or changed since",
    );
  });

  test("where any byte of it was changed: it is refused, or is the same", () => {
    const good = zipped(filesOf());
    const read = JSON.stringify(readArchive(good));
    for (let at = 0; at < good.length; at += 1) {
      const changed = Uint8Array.from(good);
      changed[at] = (changed[at] ?? 0) ^ 0x55;
      if (whyNot(changed) === "it was read")
        expect(JSON.stringify(readArchive(changed)), `byte ${at}`).toBe(read);
    }
  });

  test("where it is cut anywhere: it is refused, or is the same", () => {
    const good = zipped(filesOf());
    const read = JSON.stringify(readArchive(good));
    for (let to = 0; to < good.length; to += 1) {
      const cut = good.subarray(0, to);
      if (whyNot(cut) === "it was read") expect(JSON.stringify(readArchive(cut))).toBe(read);
    }
  });

  test("where its snapshot says what can't be", () => {
    const bad = snapshotOf({ versions: [] });
    expect(whyNot(zipped(filesOf(bad)))).toBe("garden.json: no plan is in it");
    const twice = Object(snapshotOf()).versions;
    expect(whyNot(zipped(filesOf(snapshotOf({ versions: [...twice, ...twice] }))))).toBe(
      "garden.json: versions are not in order",
    );
  });

  test("where one text is named so often that it would fill the store", () => {
    const sum = "a".repeat(64);
    const versions = Array.from({ length: 200 }, (_, i) => ({
      ...Object(snapshotOf()).versions[0],
      version: i + 1,
      beside: { "a.yaml": sum },
    }));
    const more = { [`beside/${sum}.txt`]: "x".repeat(256 * 1024) };
    expect(whyNot(zipped(filesOf(snapshotOf({ versions }), more)))).toBe(
      "its plans come to more than 24 MiB",
    );
  });

  test("where two gardens are in it", () => {
    const [a, b] = [filesOf(), filesOf()];
    const both = Object.fromEntries([
      ...Object.entries(a).map(([name, text]) => [`a/${name}`, text]),
      ...Object.entries(b).map(([name, text]) => [`b/${name}`, text]),
    ]);
    expect(whyNot(zipped(both, ""))).toBe("it holds more than one garden");
  });

  test("a name that leads out of its folder is no file of ours and is never looked at", () => {
    const files = { ...filesOf(), "../../../etc/passwd": "x", "/abs.yaml": "x" };
    expect(whyNot(zipped(files))).toBe("it was read");
    expect(whyNot(zipped(filesOf(), "../"))).toBe("it was read");
  });
});
