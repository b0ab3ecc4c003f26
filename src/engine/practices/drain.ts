import { plus } from "../../base/index.ts";
import { deed } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { caution, how, sign, why } from "./sentence.ts";
import { sharedTask, type TaskOf, window } from "./task.ts";

/** Days before the usual first frost that the lines are drained. Source: house rule; a night or two below freezing bursts them. */
const AHEAD_DAYS = 3;

function tasks({ plan }: WholeGarden): readonly TaskOf<"drain the lines">[] {
  const frost = plan.site.firstFrost;
  if (!frost || plan.beds.every(({ drip }) => drip === null)) return [];
  const due = plus(frost.usual, -AHEAD_DAYS);
  return [
    sharedTask(plan.year, null, "drain the lines", "1", {
      window: window(plus(due, -10), due, plus(frost.usual, 7), "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 30,
      title: { verb: "Drain", object: "hoses and drip lines", where: null },
      say: [
        how(
          "Shut the water off indoors, open every end, let the lines run empty, and bring timers and filters in.",
        ),
        sign("Nights near freezing are forecast, and beds want little water."),
        why(
          "The first frost usually comes about ",
          { day: frost.usual },
          "; water left in them splits them.",
        ),
        caution("Leave the backflow preventer to its maker's instructions and local rules."),
      ],
      because: [["Before the usual first frost, ", { day: frost.usual }, "."]],
      basis: ["first frost"],
    }),
  ];
}

/** Hoses and drip lines emptied before frost, where a bed has drip. */
export const DRAIN = definePractice({
  name: "drain the lines",
  past: { whole: "drained of water in its lines" },
  words: ["draining", "draining the lines"],
  deeds: [
    deed(
      [
        "drained (?:the )?(?:drip |drip lines and |hoses and )?(?:lines|hoses|drip lines)",
        "(?:the )?(?:drip )?(?:lines|hoses) (?:are |were )?drained",
      ],
      { about: "garden" },
    ),
  ],
  tasks: { shared: tasks },
});
