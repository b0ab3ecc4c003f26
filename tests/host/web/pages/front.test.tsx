import { expect, test } from "vitest";
import { frontPage } from "../../../../src/host/web/pages/front.tsx";

test("the front page says what this is, and leads nowhere", () => {
  expect(frontPage()).toContain("rings for the garden");
  expect(frontPage()).not.toContain("<a ");
});
