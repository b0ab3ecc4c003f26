import { type Agent, request } from "node:http";

/** What is sent: nothing but this and what HTTP itself needs. */
export type Call = {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
  /** Lines kept open for many requests; without it each has a line of its own. */
  readonly lines?: Agent;
};

/** An answer as it came over the wire, nothing unpacked. */
export type Answer = {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Uint8Array;
};

/** One request, over a line of its own unless told otherwise, so that none hangs on how an earlier one ended. Throws where no answer comes. */
export function call(
  url: string,
  { method = "GET", headers = {}, body = "", lines }: Call = {},
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request(url, { method, headers, agent: lines ?? false }, (answer) => {
      const parts: Uint8Array[] = [];
      answer.on("data", (part: Uint8Array) => parts.push(part));
      answer.on("error", reject);
      answer.on("end", () => {
        const headers = answer.headers as Record<string, string>;
        resolve({ status: answer.statusCode ?? 0, headers, body: Buffer.concat(parts) });
      });
    });
    asked.on("error", reject).end(body);
  });
}

/** An answer's body as text. */
export function textOf({ body }: Answer): string {
  return new TextDecoder().decode(body);
}
