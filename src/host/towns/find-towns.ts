/** A town by its name with its country, and where it lies, as a form takes it: `46.6, -112.0`. */
export type Town = { readonly name: string; readonly where: string };

/** Towns that are offered at the most. */
const MOST = 12;

/** A name as towns.txt has it to be looked for: small letters without marks, anything else a space. */
function foldedName(name: string): string {
  const plain = name.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  const spelt = plain.replace(/[øłđßæœı]/g, (letter) => SPELT[letter] ?? letter);
  return spelt.replace(/[^a-z0-9]+/g, " ").trim();
}

const SPELT: Readonly<Record<string, string>> = {
  ...{ ø: "o", ł: "l", đ: "d", ß: "ss", æ: "ae", œ: "oe", ı: "i" },
};

/**
 * The towns whose names are so, or begin so, those of that very name first and the larger ones before others. What follows a comma is
 * left out. `table` is the text of towns.txt; it is looked through as it is, since taking it apart costs more than a request has.
 */
export function findTowns(table: string, typed: string): readonly Town[] {
  const wanted = foldedName(typed.split(",")[0] ?? "");
  if (wanted === "") return [];
  return [...linesWith(table, `\n${wanted};`), ...linesWith(table, `\n${wanted} `)]
    .slice(0, MOST)
    .map(townIn);
}

function linesWith(table: string, start: string): readonly string[] {
  const found: string[] = [];
  for (let at = table.indexOf(start); at >= 0 && found.length < MOST; ) {
    const end = table.indexOf("\n", at + 1);
    found.push(table.slice(at + 1, end < 0 ? table.length : end));
    at = table.indexOf(start, at + 1);
  }
  return found;
}

function townIn(line: string): Town {
  const [key = "", name = "", country = "", state = "", latitude = "", longitude = ""] =
    line.split(";");
  const said = name || key.replace(/(?<=^| )./g, (letter) => letter.toUpperCase());
  const parts = [said, ...(state === "" ? [] : [state]), countryName(country)];
  return { name: parts.join(", "), where: `${latitude}, ${longitude}` };
}

let countries: Intl.DisplayNames | null = null;

function countryName(code: string): string {
  countries ??= new Intl.DisplayNames(["en"], { type: "region" });
  return countries.of(code) ?? code;
}
