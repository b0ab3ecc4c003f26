import { oneOf } from "./random.ts";

/** The lines that stand for a line, and how many lines below it the fault lies. */
type Changed = { readonly lines: readonly string[]; readonly told?: number };

/** A kind of fault: the lines it can be made in, and how. */
export type Fault = {
  readonly name: string;
  readonly at: RegExp;
  readonly change: (line: string, roll: () => number) => Changed;
};

const PHRASE = /^ {6}- (?!name)[a-z]+: /;
const SCALAR = /^ {2}(?:clock|latitude|last frost|first frost|colder|greenhouse)/;
const KEYED =
  /^ *(?:garden|year|measures|place|people|away|clock|latitude|last frost|first frost|is|warmed by|cloves|plants we raised):/;

const swap = (line: string, from: RegExp | string, to: string): Changed => ({
  lines: [line.replace(from, to)],
});

const put =
  (from: RegExp | string, to: string) =>
  (line: string): Changed =>
    swap(line, from, to);

/** Puts one of several values behind the line's first colon. */
const value =
  (...values: readonly string[]) =>
  (line: string, roll: () => number): Changed =>
    swap(line, /: .*$/, `: ${oneOf(values, roll)}`);

/** Adds a part to a phrase, at its end. */
const more =
  (...parts: readonly string[]) =>
  (line: string, roll: () => number): Changed => ({ lines: [`${line}, ${oneOf(parts, roll)}`] });

/** Every named kind of fault. */
export const FAULTS: readonly Fault[] = [
  {
    name: "a tab indents",
    at: /^ {2,}\S/,
    change: (line) => ({ lines: [line.replace(/^ +/, "\t")] }),
  },
  {
    name: "a tab behind spaces indents",
    at: /^ {6}- /,
    change: (line) => ({ lines: [line.replace(/^ {6}/, "  \t")] }),
  },
  {
    name: "a line is indented too little",
    at: /^ {4}(?:high|crops|warmed)|^ {8}(?:crop|cloves|plant)/,
    change: put(/^ {2}/, " "),
  },
  {
    name: "a key has no colon",
    at: /^ {2}(?:clock|latitude|last frost|greenhouse)|^ {4}is:/,
    change: put(":", ""),
  },
  { name: "a key is doubled", at: KEYED, change: (line) => ({ lines: [line, line], told: 1 }) },
  { name: "a letter is left out of a key", at: KEYED, change: (line, roll) => without(line, roll) },
  { name: "a key is not one of a plan's", at: KEYED, change: put(/^( *).*?:/, "$1zzyzx:") },
  { name: "a quote is never closed", at: SCALAR, change: put(": ", ': "') },
  { name: "a bracket is never closed", at: /^ {4}(?:low|high)/, change: put("]", "") },
  { name: "a brace is never closed", at: /^ {2}(?:Imre|Oda)/, change: put(" }", "") },
  {
    name: "a second colon stands in a line",
    at: PHRASE,
    change: (line, roll) => swap(line, ", ", oneOf([": ", ", so: "], roll)),
  },
  {
    name: "the year is no year",
    at: /^year/,
    change: value("soon", "27", "20277", "2027.5", "[2027]"),
  },
  { name: "the year is missing", at: /^year/, change: () => ({ lines: ["# year"], told: -1 }) },
  {
    name: "the clock is no zone",
    at: /clock/,
    change: value("Denver", "America/Denvr", "MST7MDT!", "Mountain Time"),
  },
  { name: "the clock is empty", at: /clock/, change: put(/: .*/, ":") },
  {
    name: "the latitude is not on earth",
    at: /latitude/,
    change: value("146.6", "-91", "46,6", "north"),
  },
  {
    name: "a day has two readings",
    at: /frost: |not before|Oda, 19/,
    change: (line, roll) =>
      swap(line, /\d+ (?:to \d+ )?[A-Z][a-z]{2}/, oneOf(["05-06", "5/6", "05.06."], roll)),
  },
  {
    name: "a day does not exist",
    at: /frost: |not before/,
    change: (line, roll) =>
      swap(line, /\d+ [A-Z][a-z]{2}/, oneOf(["31 Jun", "30 Feb", "32 May", "0 May"], roll)),
  },
  {
    name: "a month is no month",
    at: /frost: |not before|in since|Oda, 19/,
    change: (line, roll) =>
      swap(
        line,
        /(May|Apr|Jun|Oct)(?!.*(?:May|Apr|Jun|Oct))/,
        oneOf(["Mai", "Juin", "Octo ber", "Xyz"], roll),
      ),
  },
  { name: "the diary has a day in figures", at: /^ {2}- 2\d May/, change: put(/\d+ May/, "05-06") },
  {
    name: "three frost dates are not in order",
    at: /last frost/,
    change: value("21 May, 6 May, 20 Apr", "20 Apr, 21 May, 6 May", "6 May, 20 Apr, 21 May"),
  },
  { name: "there are two frost dates", at: /frost: /, change: value("20 Apr, 6 May") },
  { name: "only one frost is none", at: /last frost/, change: value("none") },
  {
    name: "the first frost comes in spring",
    at: /first frost/,
    change: value("about 2 Apr", "20 Apr", "1 Mar, 10 Mar, 20 Mar"),
  },
  {
    name: "an amount has no unit",
    at: /colder|greenhouse|^ {4}is: \d+ x/,
    change: put(/ (?:°F|ft)$/, ""),
  },
  {
    name: "a unit is of another kind",
    at: /colder|kept above|^ {4}is: \d+ x/,
    change: put(/(?:°F|ft)$/, "gal"),
  },
  {
    name: "a chance of frost is none",
    at: /springs? in /,
    change: value("0 springs in 10", "10 springs in 10", "seldom", "1 in 1"),
  },
  { name: "weather has eleven months", at: /^ {4}(?:low|high)/, change: put(/, \d+\]/, "]") },
  { name: "a mean is a word", at: /^ {4}(?:low|high)/, change: put(/, \d+,/, ", cold,") },
  {
    name: "hours are not understood",
    at: /^ {2}(?:Imre|Oda)/,
    change: (line, roll) =>
      swap(
        line,
        /gardens: [^,]+/,
        oneOf(
          ["gardens: Wde 18-19", "gardens: sometimes", "gardens: Sat 12-9", "gardens: Sat 25-26"],
          roll,
        ),
      ),
  },
  { name: "someone unknown is away", at: /Oda, 19/, change: put("Oda", "Odo") },
  { name: "an absence ends before it begins", at: /Oda, 19/, change: put("19 to 23", "23 to 19") },
  { name: "an absence has no days", at: /Oda, 19/, change: put(", 19 to 23 Jun", "") },
  {
    name: "a bed is nothing known",
    at: /^ {4}is: /,
    change: value("roundish", "12 ft", "x 4 ft", "bags"),
  },
  { name: "a bed is warmed by nothing known", at: /warmed by/, change: value("hope", "blck film") },
  { name: "two beds have one name", at: /^ {2}South bed/, change: put("South bed", "root  BED") },
  {
    name: "a word of a phrase is misspelt",
    at: PHRASE,
    change: more(
      "18 plnats",
      "3 rwos",
      "undr a board",
      "sproutd first",
      "witout weeding",
      "not befor 8 Jun",
    ),
  },
  {
    name: "a part of a phrase is not understood",
    at: PHRASE,
    change: more("with love", "big ones", "12", ""),
  },
  { name: "a practice is none", at: PHRASE, change: more("without wedding", "without singing") },
  {
    name: "a planting follows itself over another",
    at: /cloves, in since/,
    change: more("after the second garlic"),
  },
  {
    name: "a planting is for nobody known",
    at: /potato|tomato|carrot: 3/,
    change: more("for Odette", "for Imer"),
  },
  {
    name: "a planting comes after one misspelt",
    at: /carrot: 3|potato/,
    change: more("after the tomatto", "after the garlik"),
  },
  {
    name: "a name fits two plantings",
    at: /carrot: 3/,
    change: (line) => ({
      lines: ["      - potato: late white, 4 plants", `${line}, after the potatoes`],
      told: 1,
    }),
  },
  {
    name: "two plantings are alike",
    at: PHRASE,
    change: (line) => ({ lines: [line, line], told: 1 }),
  },
  {
    name: "how much is said twice",
    at: /rows|plants|cloves,/,
    change: (line) => ({
      lines: [/^ {6}- /.test(line) ? `${line}, 9 tubers` : line.replace(/1 spring.*/, "9 tubers")],
    }),
  },
  { name: "a number is a word", at: /^ {8}cloves/, change: value("sixty", "[60]", "6 0") },
  { name: "there are no plants", at: /^ {8}cloves/, change: value("0", "-3", "2.5") },
  {
    name: "what is assumed is neither done nor open",
    at: /^measures/,
    change: (line) => ({ lines: [line, "assume: maybe"], told: 1 }),
  },
  {
    name: "the measures are none",
    at: /^measures/,
    change: value("cubits", "inchs and F", "both"),
  },
  {
    name: "a list stands for a value",
    at: /clock|warmed by|^garden/,
    change: (line) => swap(line, /: (.*)$/, ": [$1]"),
  },
  {
    name: "a weather file is not there",
    at: /^ {2}greenhouse/,
    change: (line) => ({ lines: [line, "  weather: wether.yaml"], told: 1 }),
  },
];

/** Leaves out one letter of the key, so that it is no other key. */
function without(line: string, roll: () => number): Changed {
  const indent = /^ */.exec(line)?.[0].length ?? 0;
  const key = line.slice(indent, line.indexOf(":"));
  const at = indent + 1 + Math.floor(roll() * Math.max(1, key.length - 2));
  const cut = line.slice(0, at) + line.slice(at + 1);
  return {
    lines: [
      cut.slice(indent).startsWith("i:")
        ? `${line.slice(0, indent)}iss${line.slice(indent + 2)}`
        : cut,
    ],
  };
}
