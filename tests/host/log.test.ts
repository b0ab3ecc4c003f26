import { expect, test, vi } from "vitest";
import { logFailure } from "../../src/host/log.ts";

/** What one failure was logged as. */
function logged(failed: string, error: unknown, garden: string | null = null) {
  const said = vi.spyOn(console, "error").mockReturnValue();
  const number = logFailure(failed, error, garden);
  const [line] = said.mock.calls.map(String);
  said.mockRestore();
  return { number, line: line ?? "" };
}

test("a failure is one line of JSON with the number that is shown", () => {
  const { number, line } = logged("a request", new Error("no\nsuch row"), "quarry-lane");
  expect(number).toMatch(/^[a-z2-7]{4}-[a-z2-7]{4}$/);
  expect(line).not.toContain("\n");
  expect(JSON.parse(line)).toEqual({
    ...{ number, failed: "a request", garden: "quarry-lane", said: "no\nsuch row" },
    where: expect.stringContaining("log.test"),
  });
});

test("the code of a link is left out, wherever it stands, and a long message is cut", () => {
  const code = "Zm9vYmFyYmF6cXV4Zm9vYmFyYmF6cXV4Zm9vYmFyYm8";
  const { line } = logged(
    "a request",
    new Error(`/lane/owner-1/${code}/plan ${"long ".repeat(900)}`),
  );
  expect(line).not.toContain(code);
  expect(line.length).toBeLessThan(900);
});

test("what is thrown and is no error is logged too, each under another number", () => {
  expect(JSON.parse(logged("x", "just words").line)).toMatchObject({
    said: "just words",
    where: null,
  });
  const numbers = Array.from({ length: 50 }, () => logged("x", null).number);
  expect(new Set(numbers).size).toBe(50);
});
