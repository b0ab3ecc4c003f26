import { plus } from "../../base/index.ts";
import { deed } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { how, sign, why } from "./sentence.ts";
import { sharedTask, type TaskOf, window } from "./task.ts";

/** Years from one soil test to the next. Source: common practice, every third year. */
const EVERY_YEARS = 3;
/** Days after the usual first frost. Source: common practice; autumn, when the laboratory has time and lime has the winter. */
const AFTER_FROST_DAYS = 7;

/** Every third year by the calendar, so that no diary need remember the last one; none in a place without frost or beds. */
function tasks({ plan }: WholeGarden): readonly TaskOf<"test the soil">[] {
  const frost = plan.site.firstFrost;
  const ground = plan.beds.some(({ kind }) => kind === "bed");
  if (!frost || !ground || plan.year % EVERY_YEARS !== 0) return [];
  const due = plus(frost.usual, AFTER_FROST_DAYS);
  return [
    sharedTask(plan.year, null, "test the soil", "1", {
      window: window(plus(due, -14), due, plus(due, 28)),
      harm: "when you can",
      rhythm: "session",
      minutes: 30,
      title: { verb: "Take", object: "soil for a test", where: null },
      say: [
        how(
          "A trowel of soil from a hand deep in ten places of the beds, mixed in a clean bucket; dry a cupful and send it to the laboratory your extension office names.",
        ),
        sign("The soil is bare and not wet."),
        why("Every third year is enough. Feed and lime by its answer, not by guess."),
      ],
      because: [["After the usual first frost, ", { day: frost.usual }, "."]],
      basis: ["first frost"],
      needs: ["a bucket"],
    }),
  ];
}

/** Soil sent to be tested every third autumn. */
export const SOIL_TEST = definePractice({
  name: "test the soil",
  past: { whole: "tested for its soil" },
  words: ["soil test", "soil testing", "testing the soil"],
  deeds: [
    deed(
      [
        "(?:took|sent(?: in| off)?) (?:a |the )?soil (?:test|sample)s?",
        "(?:the )?soil (?:test|sample)s? (?:is |was )?(?:taken|sent(?: in| off)?)",
        "tested the soil",
        "(?:the )?soil (?:is |was )?tested",
      ],
      { about: "garden" },
    ),
  ],
  tasks: { shared: tasks },
});
