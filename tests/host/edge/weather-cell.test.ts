import { env } from "cloudflare:workers";
import { afterEach, expect, test, vi } from "vitest";
import { openMeteoAnswer, QUESTION } from "../../garden/forecast/answers.ts";
import { ports } from "../ports.ts";

const TEXT = openMeteoAnswer("2027-05-10", [
  [2, 14],
  [-1, 12],
  [4, 17],
]);

afterEach(() => {
  ports.now = Date.now;
  ports.fetch = () => Promise.reject(new TypeError("not reached"));
});

test("gardens that ask while an answer is on its way share it", async () => {
  ports.now = () => Date.UTC(2027, 4, 10, 12);
  const asked = vi.fn(async () => {
    await new Promise((done) => setTimeout(done, 20));
    return new Response(TEXT);
  });
  ports.fetch = asked;
  const cell = env.WEATHER?.getByName("Open-Meteo|46.6|-111.5|America/Denver");
  const question = { ...QUESTION, source: "Open-Meteo" } as const;
  const answers = await Promise.all([1, 2, 3].map(() => cell?.ask(question)));
  expect(asked).toHaveBeenCalledTimes(1);
  for (const answer of answers) expect(answer?.weather?.days).toHaveLength(3);
});
