/** What a colour is used for. */
export type Ink =
  /** The ground of the picture. */
  | "paper"
  /** Names and headings. */
  | "ink"
  /** Days and explanations. */
  | "pencil"
  /** The line of the soil, and the soil's usual warmth. */
  | "soil"
  /** The band of warm soil below that line. */
  | "warm"
  /** The band of frosty air above it. */
  | "frost"
  /** The edge of the frost, drawn where it is the matter. */
  | "ice"
  /** The soil of a bed seen from above. */
  | "earth"
  /** What is marked in it. */
  | "mark"
  /** Plants where their family is not the matter. */
  | "plant"
  /** Plants by their family; `other` where that has no colour of its own. */
  | FamilyInk;

/** Families with a colour of their own, by their first word. */
export type FamilyInk =
  | "cabbage"
  | "onion"
  | "carrot"
  | "beet"
  | "daisy"
  | "nightshade"
  | "gourd"
  | "pea"
  | "other";

/** A colour [#rrggbb] for each use. */
export type Palette = Readonly<Record<Ink, string>>;

/**
 * By daylight: brown and grey on unbleached paper, as in a notebook. Source: house rule; the families' colours were searched for
 * so that any two differ to every eye, and tests check that and their contrasts.
 */
export const DAYLIGHT: Palette = {
  paper: "#fbf7ec",
  ink: "#2b271f",
  pencil: "#4c4536",
  soil: "#6f4a28",
  warm: "#c58a43",
  frost: "#86a5bf",
  ice: "#3f6585",
  earth: "#f0e4cb",
  mark: "#8a3a12",
  plant: "#4c6b36",
  cabbage: "#105b75",
  onion: "#865812",
  carrot: "#773913",
  beet: "#4f0a0e",
  daisy: "#476130",
  nightshade: "#53216d",
  gourd: "#07362f",
  pea: "#514295",
  other: "#5c4f49",
};

/** By lamplight: the same drawing on dark earth. Source: house rule; tests check its contrasts. */
export const LAMPLIGHT: Palette = {
  paper: "#1c1a15",
  ink: "#f1e9d6",
  pencil: "#d0c6af",
  soil: "#bb9063",
  warm: "#8a5a24",
  frost: "#46637f",
  ice: "#8fb4d3",
  earth: "#2c261c",
  mark: "#f0a868",
  plant: "#83a45f",
  cabbage: "#52abcf",
  onion: "#e4ca5f",
  carrot: "#e68a58",
  beet: "#df90a8",
  daisy: "#cfe296",
  nightshade: "#eea7f4",
  gourd: "#81e7d3",
  pea: "#9b90ea",
  other: "#a19976",
};

/** Printed: the daylight inks on white. Source: house rule: a printer spends no ink on the ground. */
export const PRINTED: Palette = { ...DAYLIGHT, paper: "#ffffff", earth: "#ffffff" };

/** How strong the bands are at most, 0 to 1. Source: house rule: names are written on them. */
export const BAND_OPACITY = { frost: 0.5, warm: 0.34 } as const;

const variables = (palette: Palette) =>
  Object.entries(palette)
    .map(([ink, colour]) => `--${ink}:${colour}`)
    .join(";");

/** Only in a picture: a page may have the same words for other things. */
const IN = ".sowbell-picture ";

/** Each class twice, the colour itself first, for what reads SVG and knows no variables. */
const classes = (Object.keys(DAYLIGHT) as readonly Ink[])
  .map((ink) => {
    const both = (property: string) => `${property}:${DAYLIGHT[ink]};${property}:var(--${ink})`;
    return `${IN}.${ink}{${both("fill")}}${IN}.${ink}-line{fill:none;${both("stroke")}}${IN}.${ink}-stop{${both("stop-color")}}`;
  })
  .join("");

/** Names of the type, the first one found: bookish ones that phones and computers have. */
const TYPE = "Charter,'Iowan Old Style',Georgia,'Noto Serif','Liberation Serif',serif";

/** The style of every picture: daylight, lamplight and printed in one, kept to the picture it stands in. */
export const PICTURE_STYLE = [
  `.sowbell-picture{${variables(DAYLIGHT)};font-family:${TYPE}}`,
  `@media (prefers-color-scheme:dark){.sowbell-picture{${variables(LAMPLIGHT)}}}`,
  `@media print{.sowbell-picture{${variables(PRINTED)}}}`,
  classes,
  `${IN}.name{font-weight:600}${IN}.aside{font-style:italic}`,
  `${IN}.over text{paint-order:stroke;stroke-width:5px;stroke-linejoin:round;stroke:${DAYLIGHT.paper};stroke:var(--paper)}`,
  `${IN}.in-bed text{paint-order:stroke;stroke-width:4px;stroke-linejoin:round;stroke:${DAYLIGHT.earth};stroke:var(--earth)}`,
].join("");
