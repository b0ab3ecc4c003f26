import { withoutTail } from "./asides.ts";
import { spelledOut } from "./spelling.ts";

/** How the same is written in many ways, turned into one, in the order in which they are applied. */
const SAME: readonly (readonly [RegExp, string])[] = [
  [/[’‘]/g, "'"],
  [/[“”"](?=[a-z])|(?<=[a-z])[“”"]/g, ""],
  [/ ?\((?![^)]*\b(?:not|never)\b)[^)]*\)/g, ""],
  [/ & | \+ /g, " and "],
  [/\b1st\b/g, "first"],
  [/\b2nd\b/g, "second"],
  [/\b3rd (?=lot|sowing|batch|row)/g, "third "],
  [/\bdirect[- ](sow|seed)/g, "$1"],
  [/\b(sown|sowed|seeded) direct\b/g, "$1"],
  [/\bre-(sow|plant)/g, "re$1"],
  [/\b(?:the )?\w+(?: \w+)? i meant? (?=the )/g, ""],
  [/^\w+(?: \w+)?\? no,? (?:it's |it was )?/, ""],
  [/\bfor to (?=\w)/g, "to "],
  [/^.{3,60}? i meant? (?=\w+ed )/g, ""],
  [
    / (?:that |which )?(?:i|we|she|he) (?:sowed|planted|put in|started|sown)(?: (?:last|in|on|a|two|three|early|at|from|this) [\w ]*?)? (?=(?:is|are|has|have|isn't|aren't) )/g,
    " ",
  ],
  [/(?<=\w) up and (?=drying|curing|hung|hanging|stored|bagged|boxed|laid out)/g, " lifted and "],
  [/\bup ([\d½¼¾.,]+ ?(?:in|inch|inches|cm|"))(?= |$)/g, "$1 tall"],
  [/(?<=[a-z])'s (?=had it\b)/g, " has "],
  [
    /\b(?:maybe|about|nearly|almost|just under|just over|well over|only|barely) (?=(?:an?|one|half an?|\d[\d.,]*|½) ?(?:inch|in|cm|mm|ft|foot|feet)\b)/g,
    "",
  ],
  [/\b(?:up to|to|over) (?:my|the|your|our) ankles?\b|\bankle[- ]high\b/g, "10 cm tall"],
  [/\b(?:up to|to|over) (?:my|the|your|our) knees?\b|\bknee[- ]high\b/g, "50 cm tall"],
  [
    /\b(?:up to|to|over) (?:my|the|your|our) (?:waist|hips?)\b|\b(?:waist|hip)[- ]high\b/g,
    "100 cm tall",
  ],
  [/\b(?:up to|to|over) (?:my|the|your|our) shoulders?\b|\bshoulder[- ]high\b/g, "140 cm tall"],
  [/\b(?:an|one) inch and a (half|quarter)\b/g, "1 $1 inch"],
  [/\b1 half inch\b/g, "1½ in"],
  [/\b1 quarter inch\b/g, "1¼ in"],
  [/\b(?:half an?|½ an?) (?=inch)/g, "½ "],
  [/\b(?:an?|one) inch\b/g, "1 inch"],
  [
    /(?<=[a-z])'s (?=(?:all |now |just )*(?:up|in|out|through|dug|lifted|sown|planted|thinned|weeded|picked|ripe|ready|showing|flowering|blooming|dead|gone|lost)\b)/g,
    " is ",
  ],
];

/** A line's small letters in plain words: one spelling of a thing, no remarks in brackets. */
export function plainWording(text: string): string {
  let plain = spelledOut(text);
  for (const [pattern, same] of SAME) plain = plain.replace(pattern, same);
  return plain
    .replace(/\s+/g, " ")
    .replace(/[ .!,]+$/, "")
    .trim();
}

/** Words that move nothing wherever they stand. */
const FILLERS =
  /(?:^|,? )(?:at last|finally|already|just|now|today|tonight|then|this (?:morning|afternoon|evening)|at (?:breakfast|lunch|noon|dawn|dusk)|overnight|last night|every ?day|daily|instead|so far|indoors|outdoors|inside|outside|ourselves|myself|for good)(?=[ ,]|$)/g;

/** A last phrase that says where, how or how many: `in a tray`, `under fleece`, `to 4 cm`, `2 rows`. */
const PLACES =
  / (?:in|on|at|along|under|where|beside|as|inside|outside|behind|near|with|into|over|between|through|among|round|around|against|after|because|although|though|before|while|when|since|according|ahead|by|for|from|off|to keep|onto|to(?= \d| big| larger| final| individual| their| a ))(?= )/g;
const FIGURES = /,? (?:to )?\d+(?: x \d+)? ?(?:cm|mm|in|inch(?:es)?|ft|m|rows?|[a-z]+)(?: apart)?$/;

/**
 * The ways to read a clause, the whole first: without words that move nothing, then without its last phrase, its last two
 * and so on. Never less than two words.
 */
export function shorterWordings(text: string): readonly string[] {
  const plain = text.replace(FILLERS, "").replace(/^[ ,]+/, "");
  const bare = plain.replace(FIGURES, "");
  const cuts = [...plain.matchAll(PLACES)].map(({ index }) => plain.slice(0, index)).reverse();
  const short = cuts.flatMap((cut) =>
    [cut, withoutTail(cut)].filter((each) => each === cut || !/ (?:in|on|at|to|with)$/.test(each)),
  );
  return [...new Set([text, plain, bare, ...short.filter((cut) => cut.includes(" "))])];
}

/** A whole line said in another order, to be read where it cannot be read as it stands. */
export function otherOrders(text: string): readonly string[] {
  const too = /^(.+?) (\S+(?: out| in| on| up| off)?), (?:and )?(.+?) (?:too|also|as well)$/.exec(
    text,
  );
  const listed = /\bseeds? (?:in|sown|started): (.+)$/.exec(text);
  const headed = /^([^,:]+): (?!\d)(.+)$/.exec(text);
  const firstBehind = /^(\S+) (.+?),? (?:the |our )?first(?: ones?)?$/.exec(text);
  const numbered = /^(first|second|third|fourth|fifth|sixth) sowing (?:of )?(.+?)(?:,.*)?$/.exec(
    text,
  );
  return [
    ...(too ? [`${too[1]} and ${too[3]} ${too[2]}`] : []),
    ...(listed ? [`sowed ${listed[1]}`] : []),
    ...(numbered ? [`sowed ${numbered[1]} ${numbered[2]}`] : []),
    ...(firstBehind ? [`${firstBehind[1]} first ${firstBehind[2]}`] : []),
    ...(headed ? [`${headed[1]} ${headed[2]}`] : []),
  ];
}
