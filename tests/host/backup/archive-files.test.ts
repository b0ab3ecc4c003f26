import { expect, test } from "vitest";
import { archiveFiles, fileName } from "../../../src/host/backup/archive-files.ts";
import { readArchive, sumOf } from "../../../src/host/backup/read-archive.ts";
import { loadGarden } from "../../../src/host/store/gardens.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { inStore } from "../in-store.ts";
import { firstOf } from "../store/made.ts";
import { zipped } from "./archived.ts";

test("a garden's files are all listed with their check sums, and are read again", async () => {
  await inStore("weir", (sql) => {
    // Names as our own files have them, and names that lead elsewhere.
    const beside = { "garden.json": "a", SHA256SUMS: "b", "../out.yaml": "c", "2027.yaml": "d" };
    savePlan(sql, firstOf("weir", { text: "\uFEFFgarden: Weir\r\n", beside }));
    savePlan(sql, firstOf("weir", { base: 1, text: "garden: Weir\n", beside }));
    const stored = loadGarden(sql);
    if (stored === null) throw new Error("no garden");
    const files = archiveFiles(sql, stored, { "calendars/a.ics": "BEGIN" });
    const { SHA256SUMS: sums = "", ...others } = files;
    expect(sums).toBe(
      Object.entries(others)
        .map(([name, text]) => `${sumOf(text)}  ${name}\n`)
        .join(""),
    );
    expect(Object.keys(files).filter((name) => name.includes(".."))).toEqual([]);
    expect(files["_garden.json"]).toBe("a");
    const { snapshot, versions } = readArchive(zipped(files));
    expect(snapshot.garden).toBe("weir");
    expect(versions.map(({ text }) => text)).toEqual(["\uFEFFgarden: Weir\r\n", "garden: Weir\n"]);
    expect(versions.map((version) => version.beside)).toEqual([beside, beside]);
  });
});

test("a file's name stays in its folder, wherever the archive is opened", () => {
  expect(["../a", ".a", "a/b", "ä b-1.yaml"].map(fileName)).toEqual([
    "__a",
    "_a",
    "a_b",
    "ä b-1.yaml",
  ]);
});
