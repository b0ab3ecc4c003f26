import { expect, test } from "vitest";
import { TickList } from "../../../../src/host/web/pages/tick-list.tsx";

const taps = (words: string, says: string) => ({
  tasks: ["2027/beet/things-to-have/order"],
  ...{ done: { words, says }, others: [] },
});

test("each line is one button that ticks, or takes the tick back, and says so to those who hear it", () => {
  const html = String(
    <TickList
      to="/g/said"
      lines={[
        { at: "job-a", name: "Seed: <beets>", ticked: false, taps: taps("Got it", "done") },
        { at: "job-b", name: "Seed: peas", ticked: true, taps: taps("Undo", "undo: done") },
      ]}
    />,
  );
  expect(html).toContain('<li id="job-a"><form method="post" action="/g/said">');
  expect(html).toContain('class="tick" name="say" value="done">Seed: &lt;beets&gt;<span');
  expect(html).toContain('class="tick ticked" name="say" value="undo: done">Seed: peas<span');
  expect(html.match(/class="unseen">: (Got it|Undo)</g)).toHaveLength(2);
  expect(html.match(/<input /g)).toHaveLength(2);
});
