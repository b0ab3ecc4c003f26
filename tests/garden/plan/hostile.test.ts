import { describe, expect, it } from "vitest";
import { drawnFor, samples } from "../../depth.ts";
import { read, TEXT } from "./canonical.ts";
import { oneOf } from "./random.ts";

const LETTERS = [
  ..."abz09 \t\n\r:-,#'\"[]{}&*!|>%@`?~\\/.°ñ\u0000\u2028😀\ud800",
  "\n  - ",
  ": ",
  " #",
];
const SHORT = TEXT.split("\n")
  .filter((_, index) => index < 8 || index % 3 === 0)
  .join("\n");

/** A text with some letters changed, left out, or put in, and some lines swapped or doubled. */
function mutated(text: string, roll: () => number): string {
  let changed = text;
  for (let n = 1 + Math.floor(roll() * 6); n > 0; n--) {
    const at = Math.floor(roll() * changed.length);
    const cut = roll() < 0.5 ? Math.floor(roll() * 12) : 0;
    changed = changed.slice(0, at) + oneOf(LETTERS, roll) + changed.slice(at + cut);
  }
  const lines = changed.split("\n");
  const [from, to] = [roll(), roll()].map((share) => Math.floor(share * lines.length));
  if (roll() < 0.5)
    lines.splice(to ?? 0, 0, ...lines.splice(from ?? 0, 1 + Math.floor(roll() * 3)));
  return lines.join("\n");
}

function bytes(roll: () => number): string {
  const code = () => (roll() < 0.8 ? 9 + Math.floor(roll() * 118) : Math.floor(roll() * 65_536));
  return String.fromCharCode(...Array.from({ length: Math.floor(roll() * 300) }, code));
}

/** Reads a text; fails where the plan is null without a problem, or is not null with one. */
function reads(text: string): void {
  const { plan, problems } = read(text);
  const wrong = problems.some(({ weight }) => weight === "problem");
  expect(plan === null, text).toBe(wrong);
}

describe("texts nobody would write", () => {
  it("reads changed plans by the thousand without an exception", () => {
    const roll = drawnFor(1);
    for (let n = 0; n < samples(8000, 1500); n++) reads(mutated(SHORT, roll));
  }, 60_000);

  it("reads random texts by the hundred without an exception", () => {
    const roll = drawnFor(2);
    for (let n = 0; n < samples(2000, 500); n++) reads(bytes(roll));
  }, 60_000);

  it("refuses lists, braces, dashes and keys that are nested too deep", () => {
    for (const piece of ["[", "{", "{a: ", "[[", "- ", "? ", "a:\n"])
      for (const count of [29, 40, 500, 20_000]) {
        expect(read(piece.repeat(count)).plan).toBeNull();
        expect(read(`crops: ${piece.repeat(count)}`).plan).toBeNull();
      }
  });

  it("refuses keys indented ever deeper", () => {
    const deep = Array.from({ length: 600 }, (_, n) => `${" ".repeat(n)}k:`).join("\n");
    expect(read(deep).problems.map(({ code }) => code)).toEqual(["too-deep"]);
  });

  it("refuses aliases that blow up and one that contains itself", () => {
    const bomb = ["a: &a [x, x, x, x, x, x, x, x]"];
    for (const letter of "bcdefghij") {
      const before = String.fromCharCode(letter.charCodeAt(0) - 1);
      bomb.push(
        `${letter}: &${letter} [${Array.from({ length: 8 }, () => `*${before}`).join(", ")}]`,
      );
    }
    expect(read(bomb.join("\n")).problems[0]?.code).toBe("too-many-aliases");
    expect(read("garden: &a [*a]").plan).toBeNull();
    expect(read("beds: &b\n  x: *b").plan).toBeNull();
  });

  it("refuses more than 256 KiB and reads what is just below, whatever it repeats", () => {
    expect(read("a".repeat(262_145)).problems[0]?.code).toBe("too-long");
    expect(read("é".repeat(140_000)).problems[0]?.code).toBe("too-long");
    const full = `${TEXT}${"# a comment of the gardener\n".repeat(9000)}`.slice(0, 260_000);
    expect(read(full).plan).not.toBeNull();
    for (const line of ["k: [", "- ", "a: b\n", "x,", ": ", "'", "{a: b}, ", "*a "])
      reads(line.repeat(30_000));
    reads(`a: &a x\nb: [${"*a, ".repeat(60_000)}]`);
    for (const crop of ["  - carrot: after the carrots\n", "  - carrot: x, after y\n"])
      reads(`garden: x\nyear: 2027\nplace: {}\ncrops:\n${crop.repeat(8000)}`);
    for (const spaced of [`is: "1${" ".repeat(200_000)}y"`, `diary:\n  - a${" ".repeat(200_000)}b`])
      reads(spaced);
  }, 60_000);

  it("does not take a key of every object for one of its own", () => {
    reads("__proto__: x\nconstructor: y\ntoString: z");
    reads(TEXT.replace("for Oda", "for constructor").replace("a board", "a toString"));
    reads(TEXT.replace("lettuce:", "__proto__:").replace("weekends,", "constructor,"));
  });
});
