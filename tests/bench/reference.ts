/** How much the reference does: so that it takes `REFERENCE_MS` of bounds.ts where the bounds were set. */
const RECORDS = 1540;
const CHECKSUM_ROUNDS = 12;

type Reference = { readonly id: string; readonly day: number; readonly text: string };

/**
 * A fixed piece of plain JavaScript with the same kinds of work as ours: small records made, sorted, grouped, written as
 * JSON and read again, text escaped and joined, bytes summed. Gives a checksum, so that nothing of it can be left out.
 */
export function reference(): number {
  const records = Array.from({ length: RECORDS }, (_, index) => recordOf(index));
  const read: readonly Reference[] = JSON.parse(JSON.stringify(records));
  const sorted = read.toSorted((a, b) => a.day - b.day || (a.id < b.id ? -1 : 1));
  const byDay = new Map<number, Reference[]>();
  for (const one of sorted) byDay.set(one.day, [...(byDay.get(one.day) ?? []), one]);
  const lines = [...byDay].flatMap(([day, group]) => group.map((one) => lineOf(day, one)));
  return checksum(new TextEncoder().encode(lines.join("\r\n")));
}

function recordOf(index: number): Reference {
  const bed = index % 83;
  const text = `Thin beets, Root bed ${bed}; leave the strongest, water first\nFine till day ${index}.`;
  return { id: `2027/beet-${bed}/thin/${index}`, day: (index * 7919) % 365, text };
}

function lineOf(day: number, { id, text }: Reference): string {
  return `${day}:${id}:${text.replace(/[\\;,]/g, "\\$&").replace(/\n/g, "\\n")}`;
}

/** Source: FNV-1a, 32 bits, Fowler, Noll and Vo; over the bytes again and again. */
function checksum(bytes: Uint8Array): number {
  let sum = 0x811c9dc5;
  for (let round = 0; round < CHECKSUM_ROUNDS; round++)
    for (const byte of bytes) sum = Math.imul(sum ^ byte, 0x01000193);
  return sum >>> 0;
}
