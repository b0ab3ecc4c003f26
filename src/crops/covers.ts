import type { Figure, NumberRange } from "./facts.ts";
import { commonPractice, houseRule, published } from "./figures.ts";

/** What is laid over plants, or over the soil that they will stand in, and all that is said of it. */
export type CoverRecord<Name extends string = string> = {
  readonly name: Name;
  /** What plans and diaries call it, in lower case and in the singular. */
  readonly words: readonly string[];
  /** `plants`: a plan lays it over a planting, `under a net`; `soil`: over a bed, `warmed by: black film`. */
  readonly over: "plants" | "soil";
  /** What it is for where a plan asks for it over plants: pests that it keeps out, or nothing of the kind. */
  readonly keepsOutPests: boolean;
  /** How much warmer it is under it, least and most [K], by weight where that matters: air over plants, else soil. Null: nobody counts on it. */
  readonly warmsK: Readonly<Record<string, Figure<NumberRange>>> | null;
  /** As a title begins: `Net`. */
  readonly title: string;
  /** As a sentence begins: `A fine net`. */
  readonly sentence: string;
  /** What to bring for it, as a list is read. */
  readonly needs: string;
};

const defineCover = <const Name extends string, const Cover extends CoverRecord<Name>>(
  cover: Cover & { readonly name: Name },
): Cover => cover;

/** A board over a row of slow seed, which keeps it damp till it is up. */
export const BOARD_COVER = defineCover({
  name: "board",
  words: ["board"],
  over: "plants",
  keepsOutPests: false,
  warmsK: null,
  title: "Board",
  sentence: "A board",
  needs: "a board",
});

/** A net fine enough for flies. It lets the cold through. */
export const NET = defineCover({
  name: "net",
  words: [
    "net",
    "netting",
    "insect net",
    "insect netting",
    "fine net",
    "fine netting",
    "mesh",
    "insect mesh",
    "fine mesh",
    "bird net",
    "bird netting",
    "butterfly net",
  ],
  over: "plants",
  keepsOutPests: true,
  warmsK: null,
  title: "Net",
  sentence: "A fine net",
  needs: "a net, hoops and pegs",
});

const ROW_COVERS = "University of New Hampshire Extension, Using row covers in the garden";

/** Fabric: 2 °F under half an ounce a square yard, 6 to 10 °F under 1.5 to 2.2 ounces. */
export const FABRIC = defineCover({
  name: "fabric",
  words: [
    "fabric",
    "fleece",
    "row cover",
    "frost cloth",
    "frost fabric",
    "garden fleece",
    "garden fabric",
    "floating row cover",
    "hoops and fleece",
    "hoops and fabric",
  ],
  over: "plants",
  keepsOutPests: true,
  warmsK: {
    "light fabric": published([10 / 9, 10 / 9], ROW_COVERS),
    "heavy fabric": published([10 / 3, 50 / 9], ROW_COVERS),
  },
  title: "Fabric",
  sentence: "Fabric",
  needs: "fabric, hoops and pegs",
});

/** Cloches of glass or clear film, bells or a low tunnel, which warm both the plants and the soil they stand in. */
export const CLOCHE = defineCover({
  name: "cloche",
  words: ["cloche", "bell cloche", "tunnel cloche", "low tunnel", "mini tunnel"],
  over: "plants",
  keepsOutPests: false,
  warmsK: { air: commonPractice([1, 3]), soil: commonPractice([2, 3]) },
  title: "Cloches",
  sentence: "Cloches",
  needs: "cloches",
});

/** Black film on the soil, which warms a bed before a warm crop goes in. */
export const FILM = defineCover({
  name: "film",
  words: ["black film", "black plastic", "black fabric", "film", "plastic", "fabric"],
  over: "soil",
  keepsOutPests: false,
  warmsK: { film: houseRule([3, 3], "the low end of what growers report") },
  title: "Film",
  sentence: "Black film",
  needs: "black film",
});

/** Every cover. */
export const COVERS = [BOARD_COVER, NET, FABRIC, CLOCHE, FILM] as const;

/** The name of a cover. */
export type CoverName = (typeof COVERS)[number]["name"];

/** The name of a cover that a plan can lay over a planting. */
export type PlantCoverName = Extract<(typeof COVERS)[number], { readonly over: "plants" }>["name"];

/** The name of a cover against pests. */
export type PestCoverName = Extract<
  (typeof COVERS)[number],
  { readonly keepsOutPests: true }
>["name"];

type AnyCover = (typeof COVERS)[number];

/** The cover of that name. */
export function coverNamed<Name extends CoverName>(
  name: Name,
): Extract<AnyCover, { readonly name: Name }> {
  const found = COVERS.find((cover) => cover.name === name);
  if (!found) throw new Error(`no cover is called ${name}`);
  return found as Extract<AnyCover, { readonly name: Name }>;
}

/** Every word, singular and plural, for what lies over plants or over soil, or for those of them that are asked for. */
export function coverWords(
  over: AnyCover["over"],
  which = (_: CoverName) => true,
): readonly string[] {
  return COVERS.filter((cover) => cover.over === over && which(cover.name)).flatMap(({ words }) =>
    words.flatMap(forms),
  );
}

const forms = (word: string) => [word, `${word}s`];

/** The cover over plants that a word means (`fleece`, `the nets`), or null. */
export function plantCoverOf(text: string): PlantCoverName | null {
  const word = text.toLowerCase().replace(/^(?:an?|the) /, "");
  for (const cover of COVERS)
    if (cover.over === "plants" && cover.words.flatMap(forms).includes(word)) return cover.name;
  return null;
}

/** Whether a cover keeps out pests. */
export function isPestCover(name: CoverName): name is PestCoverName {
  return coverNamed(name).keepsOutPests;
}

/** The cover against pests among those that a plan lays over one planting, the finer first; null where there is none. */
export function pestCoverIn(under: readonly CoverName[]): PestCoverName | null {
  return (
    COVERS.map(({ name }) => name)
      .filter(isPestCover)
      .find((name) => under.includes(name)) ?? null
  );
}
