import { expect, test } from "vitest";
import { bedRoom } from "../../src/app/room.ts";
import { SPRING, TODAY } from "./reports.ts";

test("a bed's room is told as values and in the household's words", () => {
  const room = bedRoom(SPRING.year, "salad-bed", TODAY);
  expect(room?.space.name).toBe("Salad bed");
  expect(room?.text.head[0]).toBe("Salad bed on 8 May 2027");
});

test("a bed that no plan has gives none", () => {
  expect(bedRoom(SPRING.year, "nowhere", TODAY)).toBeNull();
});
