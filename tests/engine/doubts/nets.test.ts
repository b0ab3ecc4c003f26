import { describe, expect, test } from "vitest";
import { netDoubts } from "../../../src/engine/doubts/nets.ts";
import { planOf } from "../../gardens.ts";
import { bedOf } from "../beds/gardens.ts";

const NETTED = bedOf(["parsnip: 2 rows, under a net"]);
const told = (before: string, now = NETTED) => netDoubts([planOf(before), planOf(now)]);

describe("a net over last year's hosts", () => {
  test("is doubted at its planting, with what stood there and what to do", () => {
    const [doubt, ...more] = told(bedOf(["carrot: 3 rows"], { year: 2026 }));
    expect(more).toEqual([]);
    expect(doubt).toMatchObject({ code: "net-over-hosts", weight: "doubt", at: { line: 20 } });
    expect(doubt?.is).toBe(
      "The net over parsnip would shut in the pests of the carrot family: Long bed had carrot last year (plans/quarry-lane/2026.yaml, line 20), and they winter in its soil",
    );
    expect(doubt?.shouldBe).toBe("Grow parsnip in another bed, or leave the cover off there");
  });

  test("is none where the bed had no host last year, nor where the host stood there earlier", () => {
    expect(told(bedOf(["lettuce: 2 rows"], { year: 2026 }))).toEqual([]);
    expect(told(bedOf(["carrot: 3 rows"], { year: 2025 }))).toEqual([]);
  });

  test("is none under glass, where nobody is told to lay one", () => {
    const is = "greenhouse, 12 x 8 ft";
    const beets = (year: number) => bedOf(["beet: 2 rows"], { year, is });
    expect(told(beets(2026), beets(2027))).toEqual([]);
    expect(told(bedOf(["beet: 2 rows"], { year: 2026 }), bedOf(["beet: 2 rows"]))).toHaveLength(1);
  });

  test("traps no birds, and nothing where there is no net or new soil", () => {
    const beets = bedOf(["beet: 2 rows"], { year: 2026 });
    const birds = told(beets, bedOf(["beet: 2 rows"])).filter(({ is }) => is.includes("birds"));
    expect(birds).toEqual([]);
    const carrots = bedOf(["carrot: 3 rows"], { year: 2026 });
    expect(told(carrots, bedOf(["parsnip: 2 rows"]))).toEqual([]);
    const is = "6 grow bags, 16 in across, 14 in high";
    const bags = (year: number) => bedOf(["carrot: 9 plants, under a net"], { year, is });
    expect(told(bags(2026), bags(2027))).toEqual([]);
  });
});
