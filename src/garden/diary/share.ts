const NUMBER = "(?:\\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve)";
const SHARE =
  `(?:(?:only |just |about |at least |maybe |nearly |almost |over |more than |less than )*` +
  `(?:half(?: an?)?|most|some|part|parts|a part|a few|the odd|the odd one|a couple|a couple|several|many|a lot|lots|a good (?:few|half|part)|${NUMBER}|a third|one third|a quarter|one quarter|(?:two|three) (?:thirds|quarters)|\\d+ ?(?:%|percent|per cent)|the (?:first|outer|inner|top|other|left|right|far|near|north|south|east|west) (?:half|row|end|side|rows)|one (?:row|end|side|half))` +
  `(?: off? (?=(?:the|my|our|them|those|these|all|every|each|${NUMBER})\\b))`;
/** `half of the`, `three of the eight`, `one row of the`, before a name. */
const SHARE_OF = new RegExp(`${SHARE}(?:the |my |our |them |those |these |all )*(?:${NUMBER} )?)`);
const HALF = /\b(?:only |just |about |nearly |almost )*half (?=(?:the|my|our|of|a row)\b)/;
const ONLY_SOME = /\bonly (?:some|a few|half|part|one|two|three|four|five|\d+)(?: of)? /;
const ALL_BUT =
  /,? (?:(?:all|everything) but|bar|except|except for|apart from|but for) (?:the |one |a |two |\d+ |last |four |three |few |end |first )+[^,.]*$|,? (?:all|everything) (?:but|except) [^,.]+$/;
const BEHIND =
  /(?:,| -)? (?:well |only |at least |just |about )*(?:some of (?:them|it)|half of (?:them|it)|most of (?:them|it)|the first half|half|only half|only some|in part|partly|partially|not all|not all of them(?: maybe half)?|one row|only one row|just one row|one end|the rest (?:tomorrow|later|next week|to follow|another day)|rest (?:tomorrow|later|next week|to follow|another day))$/;

/** A clause of some of what it names, with the words for it left out; null where it speaks of all. */
export function withoutShare(clause: string): string | null {
  for (const pattern of [ALL_BUT, BEHIND, SHARE_OF, ONLY_SOME, HALF]) {
    const whole = clause
      .replace(pattern, (said) => (/ of (?:the|my|our) /.test(` ${said}`) ? "the " : ""))
      .replace(/\s+/g, " ")
      .trim();
    if (whole !== clause) return whole;
  }
  return null;
}

/** Whether a clause is nothing but the words for a part: `all but four`, `half of them`. */
export const isShare = (clause: string): boolean =>
  !/^\d+ of (?:them|it)$/.test(clause) &&
  (withoutShare(`, ${clause}`) === "" ||
    /^(?:not all|not all of them|only the (?:tops|outer leaves)|(?:only |just |about )*(?:half|part of|most of|a third of) (?:the |a )?(?:row|bed|tray|packet|lot)(?: .*)?)$/.test(
      clause,
    ));
