import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import { pack } from "../../../src/host/backup/pack.ts";

test("files lie in one folder, and equal files give equal bytes", () => {
  const files = { "a.txt": "ä", "b/c.txt": "" };
  const bytes = pack("weir", files, Date.UTC(2027, 4, 8));
  const read = Object.entries(unzipSync(bytes)).map(([name, file]) => [name, strFromU8(file)]);
  expect(read).toEqual([
    ["weir/a.txt", "ä"],
    ["weir/b/c.txt", ""],
  ]);
  expect(pack("weir", files, Date.UTC(2027, 4, 8))).toEqual(bytes);
});
