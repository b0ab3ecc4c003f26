import { describe, expect, test } from "vitest";
import { bodyOf } from "../../../src/host/web/body.ts";

const sent = (body: BodyInit | null) => new Request("https://a.test/", { method: "POST", body });

describe("a request's body", () => {
  test("is text up to the bound, by bytes", async () => {
    expect(await bodyOf(sent("peas"), 4)).toBe("peas");
    expect(await bodyOf(sent("pease"), 4)).toBeNull();
    expect(await bodyOf(sent("çça"), 4)).toBeNull();
    expect(await bodyOf(sent("çça"), 5)).toBe("çça");
  });

  test("is empty where nothing was sent", async () => {
    expect(await bodyOf(sent(null), 4)).toBe("");
  });

  test("is read no further than the bound", async () => {
    let given = 0;
    let gaveUp = false;
    const stream = new ReadableStream<Uint8Array>(
      {
        pull(controller) {
          given += 1;
          controller.enqueue(new TextEncoder().encode("aaaa"));
        },
        cancel() {
          gaveUp = true;
        },
      },
      { highWaterMark: 0 },
    );
    const endless = { body: stream } as unknown as Request;
    expect(await bodyOf(endless, 10)).toBeNull();
    expect([given, gaveUp]).toEqual([3, true]);
  });
});
