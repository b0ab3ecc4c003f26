import { expect, test } from "vitest";
import { type Day, dayOrThrow } from "../../../src/base/days/day.ts";
import { addLine } from "../../../src/host/store/diary.ts";
import { movedBy, storeMoved } from "../../../src/host/store/moved.ts";
import { inStore } from "../in-store.ts";

test("what moved is known of each line that a build was the first to know", async () => {
  await inStore("moved", (sql) => {
    const moved = [{ id: "a", day: 3 as Day, text: "Thin beets: 3 May, was 1 May (2 days later)" }];
    storeMoved(sql, [4, 5], moved);
    storeMoved(sql, [6], []);
    expect([4, 5, 6, 7].map((line) => movedBy(sql, line))).toEqual([moved, moved, [], null]);
  });
});

test("what moved long ago is forgotten", async () => {
  await inStore("long-ago", (sql) => {
    const said = { day: dayOrThrow(2027, 5, 8), text: "x", task: null, person: null, saidAt: 0 };
    for (let line = 0; line < 202; line += 1) addLine(sql, said);
    storeMoved(sql, [1, 2], []);
    storeMoved(sql, [202], []);
    expect([1, 2, 202].map((line) => movedBy(sql, line))).toEqual([null, [], []]);
  });
});
