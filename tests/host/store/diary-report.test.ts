import { expect, test } from "vitest";
import type { Day } from "../../../src/base/days/day.ts";
import { diaryReport, storeDiaryReport } from "../../../src/host/store/diary-report.ts";
import { inStore } from "../in-store.ts";

test("the diary as it was understood comes back in its order; there is none before a build", async () => {
  await inStore("report", (sql) => {
    expect(diaryReport(sql)).toEqual([]);
    const line = (text: string, day: number) => {
      return { line: 1, day: day as Day, text, understood: ["seen: Carrots up"] };
    };
    storeDiaryReport(sql, [line("b", 2), line("a", 1)]);
    storeDiaryReport(sql, [line("c", 3), line("b", 2)]);
    expect(diaryReport(sql)).toEqual([line("c", 3), line("b", 2)]);
  });
});
