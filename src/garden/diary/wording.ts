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
  [/ (?:on|in|under|along) (?:the |a )?[\w ]+? (?=(?:curing|drying)$)/g, " "],
  [/^put up \d+ (?:qts?|quarts|pints|jars)(?: of)? /, "canned "],
  [
    /^((?:the |my )?[\w ]+?) (?:has|have|is|are) [\w ]+? i meant? (?:it|they) (?=(?:has|have|is|are) )/,
    "$1 ",
  ],
  [/^\w+ no (\w+) the \1 /, "the $1 "],
  [/ (?:uh|um|er|erm)(?= )/g, ""],
  [/\b(the|a) \1(?= )/g, "$1"],
  [/\b(?:surface|thinly|station)[- ]sown\b/g, "sown"],
  [/\bbtw\b/g, "between"],
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
  / (?:in|on|at|along|under|where|beside|as|inside|outside|behind|near|with|into|over|between|through|among|round|around|against|after|because|although|though|before|while|when|since|according|ahead|like|i|we|till(?= it)|by|for|from|off|to keep|onto|to(?= \d| big| larger| final| individual| their| a ))(?= )/g;
const FIGURES = /,? (?:to )?\d+(?: x \d+)? ?(?:cm|mm|in|inch(?:es)?|ft|m|rows?|[a-z]+)(?: apart)?$/;

/** Cuts [count] of a clause that are tried, half of them the longest and half the shortest. Source: house rule. */
const MOST_CUTS = 6;

/**
 * The ways to read a clause, the whole first: without words that move nothing, then without its last phrase, its last two
 * and so on. Never less than two words.
 */
export function shorterWordings(text: string): readonly string[] {
  const plain = text.replace(FILLERS, "").replace(/^[ ,]+/, "");
  const bare = plain.replace(FIGURES, "");
  const cuts = [...plain.matchAll(PLACES)].map(({ index }) => plain.slice(0, index)).reverse();
  const some =
    cuts.length > MOST_CUTS
      ? [...cuts.slice(0, MOST_CUTS / 2), ...cuts.slice(-MOST_CUTS / 2)]
      : cuts;
  const short = some.flatMap((cut) =>
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
  const toWeed = /^took (?:the )?\w+ off (?:the )?(.+?) to (weed|thin)\b/.exec(text);
  const toGo = /^(.+?) (planting|sowing): (?:done|did) .+? to go\b/.exec(text);
  const spaced =
    /^([\w' ]+?)(?:, \d+ (?:sets|plants|cloves|tubers|slips)|(?: block)?(?: \d+ x \d+)? set) at \d+ ?(?:cm|in|inches)\b.*$/.exec(
      text,
    );
  const glass =
    /^(?:under glass|indoors|on the windowsill|in the propagator|on heat|in trays): (.+)$/.exec(
      text,
    );
  const meal =
    /^(?:the |our |my )?first (.+?) for (?:consumption|eating|tea|dinner|supper|lunch|the table|the pot)$/.exec(
      text,
    );
  const bowl =
    /^(?:a )?(?:little |small )?(?:bowl|handful|punnet|kilo|basket) of (.+?), (?:the |our )?first$/.exec(
      text,
    );
  const firstBehind = /^(\S+) (.+?),? (?:the |our )?first(?: ones?)?$/.exec(text);
  const numbered = /^(first|second|third|fourth|fifth|sixth) sowing (?:of )?(.+?)(?:,.*)?$/.exec(
    text,
  );
  return [
    ...(too ? [`${too[1]} and ${too[3]} ${too[2]}`] : []),
    ...(listed ? [`sowed ${listed[1]}`] : []),
    ...(toWeed ? [`${toWeed[2] === "weed" ? "weeded" : "thinned"} ${toWeed[1]}`] : []),
    ...(toGo ? [`${toGo[2] === "sowing" ? "sowed" : "planted"} half of the ${toGo[1]}`] : []),
    ...(spaced ? [`planted ${spaced[1]}`] : []),
    ...(glass ? [`sowed ${glass[1]}`] : []),
    ...(meal ? [`picked first ${meal[1]}`] : []),
    ...(bowl ? [`picked first ${bowl[1]}`] : []),
    ...(numbered ? [`sowed ${numbered[1]} ${numbered[2]}`] : []),
    ...(firstBehind ? [`${firstBehind[1]} first ${firstBehind[2]}`] : []),
    ...(headed ? [`${headed[1]} ${headed[2]}`] : []),
  ];
}
