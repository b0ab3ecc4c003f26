/** What a bed has already, so that nobody buys or builds it again. */
type Fixture<Name extends string = string> = {
  readonly name: Name;
  /** What plans call it, in lower case and in the singular or plural that is usual. */
  readonly words: readonly string[];
  /** Whether it stands all year; crops that climb go up it, and nothing is put up for them. */
  readonly stands: boolean;
  /** Things to have that it saves, as crops name them. */
  readonly saves: RegExp;
};

const defineFixture = <const Name extends string>(fixture: Fixture<Name>): Fixture<Name> => fixture;

/** Every fixture that a plan can name, `has: a trellis` or `with collars`. Source: house rule: what crops ask for by name. */
export const FIXTURES = [
  defineFixture({
    name: "trellis",
    words: ["trellis", "trellises", "pea netting", "bean netting", "climbing net", "wires"],
    stands: true,
    saves: /\b(?:trellis|netting|twiggy sticks|poles|wires)\b/,
  }),
  defineFixture({
    name: "canes",
    words: ["canes", "bamboo canes", "bamboo", "poles", "bean poles", "sticks", "pea sticks"],
    stands: false,
    saves: /\b(?:canes|poles|sticks|stakes?)\b/,
  }),
  defineFixture({
    name: "stakes",
    words: ["stakes", "stake", "wooden stakes"],
    stands: false,
    saves: /\bstakes?\b/,
  }),
  defineFixture({
    name: "cages",
    words: ["cages", "cage", "tomato cages", "wire cages"],
    stands: false,
    saves: /\b(?:cage|stakes?)\b/,
  }),
  defineFixture({
    name: "collars",
    words: ["collars", "collar", "cabbage collars", "card collars", "cutworm collars"],
    stands: false,
    saves: /\bcollars?\b/,
  }),
] as const;

/** The name of a fixture. */
export type FixtureName = (typeof FIXTURES)[number]["name"];

/** Every word for a fixture, the longest first, so that a pattern of them takes the longest that fits. */
export function fixtureWords(): readonly string[] {
  return FIXTURES.flatMap(({ words }) => words).sort((a, b) => b.length - a.length);
}

/** The fixture that a word means (`a trellis`, `the collars`), or null. Case does not matter. */
export function fixtureOf(text: string): FixtureName | null {
  const word = text.toLowerCase().replace(/^(?:an?|the|its|their) /, "");
  return FIXTURES.find(({ words }) => words.includes(word))?.name ?? null;
}

/** Whether crops climb one of them, which stands there all year. */
export function isClimbed(has: readonly FixtureName[]): boolean {
  return FIXTURES.some(({ name, stands }) => stands && has.includes(name));
}

/** Whether one of them saves having a thing ready, named as a crop's facts name it. */
export function isAtHand(thing: string, has: readonly FixtureName[]): boolean {
  return FIXTURES.some(({ name, saves }) => has.includes(name) && saves.test(thing));
}
