import { connect } from "node:net";

/** What came back over a line: everything as it was sent, and the status of its first line, null where none came. */
export type Reply = { readonly status: number | null; readonly text: string };

const PATIENCE_MS = 10_000;

/**
 * Sends these bytes, unmended, over a line of its own, and waits for one answer, or for the other side to hang up. `hangUp`: this side ends
 * it as soon as all is sent. The other side may hang up first, in the midst of being sent to.
 */
export function send(
  origin: string,
  bytes: string | Uint8Array,
  { hangUp = false }: { readonly hangUp?: boolean } = {},
): Promise<Reply> {
  const { hostname, port } = new URL(origin);
  return new Promise((resolve) => {
    const parts: Uint8Array[] = [];
    const line = connect({ host: hostname, port: Number(port) }, () =>
      line.write(bytes, () => hangUp && line.destroy()),
    );
    line.setTimeout(PATIENCE_MS, () => line.destroy());
    line.on("data", (part: Uint8Array) => {
      parts.push(part);
      if (isWhole(Buffer.concat(parts).toString("latin1"))) line.destroy();
    });
    line.on("error", () => undefined);
    line.on("close", () => resolve(replyIn(Buffer.concat(parts).toString("latin1"))));
  });
}

/** The runtime keeps lines open even where it is asked to hang up. */
function isWhole(text: string): boolean {
  const end = text.indexOf("\r\n\r\n");
  const length = /\r\ncontent-length: (\d+)\r\n/i.exec(text)?.[1];
  if (end < 0 || length === undefined) return text.endsWith("\r\n0\r\n\r\n");
  return text.length >= end + 4 + Number(length);
}

function replyIn(text: string): Reply {
  const found = /^HTTP\/1\.[01] (\d{3})\b/.exec(text);
  return { status: found ? Number(found[1]) : null, text };
}

/** A request as text: its first line, header lines, and a body with its length; the other side is asked to hang up after it. */
export function written(
  first: string,
  headers: Readonly<Record<string, string>> = {},
  body: string | null = null,
): string {
  const length = body === null ? {} : { "Content-Length": String(Buffer.byteLength(body)) };
  const lines = Object.entries({ Connection: "close", ...length, ...headers });
  return [first, ...lines.map(([name, value]) => `${name}: ${value}`), "", body ?? ""].join("\r\n");
}
