/** What a clause may begin with that is no part of what it tells. */
const LEAD =
  /^(?:(?:so|and|but|then|also|well|ok|okay|oh|ooh|ah|aha|um|uh|er|right|anyway|look|hooray|yay|yippee|whoop|whoops|oops|phew|finally|today|tonight|just|only just|now|here|meanwhile|actually|already|at last|at long last|this (?:morning|afternoon|evening)|last night|quickly|managed to get|note to (?:diary|self)|hi diary|hello diary|open diary|ok diary|okay diary|new entry|new paragraph|let's see|let me see|guess what|measured(?= soil| rain| low| night)|and also|seen that|just seen that|noticed that|noticed|i notice|it seems|labou?r weekend|bank holiday(?: monday)?|easter(?: monday| sunday| weekend)?|good friday|boxing day|anzac day|so much for|dear diary|diary|memo|reckon|i reckon|i think|we think|i see|we see|looks like|it looks like|you can see|we now have|we have now|we finally have)[,:;]? +)+(?=\S)/;
/** Who told it, where that is the household. */
const TELLER =
  /^(?:(?:i|we|she|he)(?: have|'ve|'d| had| has|'s)?(?: both| all| also| just| finally| now| already| only| then| even)* +)(?=\S)/;

/** `I'm holding off`: the household again. */
const AM = /^(?:i'm|i am|we're|we are) (?=\w+ing\b)/;
/** Told as it is done: `we pick basil`. */
const NOW = /^(?:i|we) (?<now>pick|cut|eat|harvest|pull|dig|lift|pass)\b/;
const PAST: Readonly<Record<string, string>> = {
  pick: "picked",
  cut: "cut",
  eat: "ate",
  harvest: "harvested",
  pull: "pulled",
  dig: "dug",
  lift: "lifted",
  pass: "passed",
};

/** Work as a noun, and as it is said when done. */
const GERUND: Readonly<Record<string, string>> = {
  thinning: "thinned",
  sowing: "sowed",
  planting: "planted",
  transplanting: "transplanted",
  weeding: "weeded",
  hoeing: "hoed",
  hilling: "hilled",
  staking: "staked",
  netting: "netted",
  covering: "covered",
  pruning: "pruned",
  feeding: "fed",
  picking: "picked",
  harvesting: "harvested",
  lifting: "lifted",
  clearing: "cleared",
  mulching: "mulched",
};
const COMPLETED =
  /^(?<work>[a-z]+ing) (?:of )?(?:the )?(?<subject>.+?) (?:is |was |all |now )*(?:completed|complete|done|finished)$/;
const DID =
  /^(?:did|done|finished|completed) (?:the )?(?<work>[a-z]+ing) (?:of|on|in) (?:the )?(?<subject>.+)$/;

/** `Thinning of carrots completed` as `thinned carrots`; the same where a clause says nothing of the kind. */
function asPast(clause: string): string {
  for (const pattern of [COMPLETED, DID]) {
    const { work = "", subject } = pattern.exec(clause)?.groups ?? {};
    const past = Object.hasOwn(GERUND, work) ? GERUND[work] : undefined;
    if (past !== undefined) return `${past} ${subject}`;
  }
  return clause;
}

/** A line that the household tells as it is done, told as done: `we pick basil`. */
export const asTold = (text: string): string => text.replace(NOW, (_, now) => PAST[now] ?? now);

/** A clause without interjections in front of it and without the household as its teller. */
export function withoutLead(clause: string): string {
  let plain = clause;
  for (let before = ""; before !== plain; ) {
    before = plain;
    plain = plain
      .replace(LEAD, "")
      .replace(NOW, (_, now) => PAST[now] ?? now)
      .replace(AM, "")
      .replace(TELLER, "");
  }
  return asPast(plain);
}

/** Remarks on how it went, how many there were or with what, which end a clause and move nothing. */
const TAIL: readonly RegExp[] = [
  /,? (?:straight away|right away|at once|bang on|as usual|as ever|as always|as you do|as it happens|like mad|going well|nicely|nice|well|fine|lovely|properly|thickly|thinly|by hand|by mistake|by accident|in the end|in time|in full|all over|anyway|anyhow|too|as well|either|for once|this time|of the year|of the season|so far this year|this year|this season|this spring|this summer|this autumn|this week|the other day|both rows|all rows|all of them|all of it|the lot|the whole lot|every one|every last one|everywhere|hard|early|late|deep|thick|thickly|strong|evenly|the second lot|just|only|again now|so much|at a time|or so|or thereabouts|each|here|there|yay|phew|ugh|thank goodness|thank god|thankfully|hurrah|honestly|i think|i swear|of course|once more|for a change|once and for all|so there|job done|done|nearly killed me|and about time|about time|ish)$/,
  /,? (?:on )?day \d+$/,
  /,? week \d+$/,
  /,? out of (?:\d+|[a-z]+)(?: plants)?$/,
  /,? (?<! out of| day| batch| lot| sowing| no| number)(?:about |some |only |just )*(?:\d+(?:[.,/]\d+)?|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|half|several|a couple of|couple of|a few|a dozen|dozen)(?: a| more| big| small| fat| decent| good)*(?: (?:of them|plants?|rows?|pots?|trays?|pcs|pieces?|heads?|sets?|cloves?|tubers?|buckets?|baskets?|bags?|bowls?|kilos?|kg|g|lbs?|pounds?|oz|handfuls?|bunches|bunch|bucketfuls?|trugs?|boxes|crates?|cm|mm|in|inch(?:es)?|ft|feet|m|metres?|days?|weeks?|times?|dozen))?(?: (?:apart|deep|each|long|wide|to a cane|and a half|in all|in total))*$/,
  /,? spacing .+$/,
  /,? (?:about )?\d+ ?(?:%|percent)$/,
  /,? about$/,
  /,? (?:on )?day \d+$/,
  /,? (?:a|two|three|four) (?:weeks?|months?) (?:early|late)$/,
  /,? out of (?:\d+|[a-z]+)(?: plants)?$/,
];

/** A clause without remarks at its end; the same where it ends in none. */
export function withoutTail(clause: string): string {
  let plain = clause;
  for (let before = ""; before !== plain; ) {
    before = plain;
    for (const tail of TAIL) {
      const cut = plain.replace(tail, "");
      if (cut.includes(" ")) plain = cut;
    }
  }
  return plain;
}
