import { expect, test } from "vitest";
import { bedDoubts } from "../../../src/engine/doubts/beds.ts";
import { QUARRY } from "../../gardens.ts";
import { bedOf, yearOf } from "../beds/gardens.ts";

test("a garden's beds are doubted file by file and line by line", () => {
  const before = bedOf(["carrot: 10 rows", "beet: 7 rows, sow 9 May"], { year: 2026 });
  const now = bedOf(["carrot: 10 rows", "parsnip: 6 rows, under a net, sow 12 May"]);
  const told = bedDoubts(yearOf(before, now)).map(
    ({ at, code }) => `${at.file.slice(-9, -5)} ${at.line} ${code}`,
  );
  expect(told).toEqual(["2026 21 bed-crowded", "2027 21 bed-crowded", "2027 21 net-over-hosts"]);
});

test("the lane's own garden leaves nothing in doubt", () => {
  expect(bedDoubts(yearOf(QUARRY))).toEqual([]);
});
