import { expect, test } from "vitest";
import {
  Carried,
  Choice,
  ErrorSummary,
  Field,
  Radios,
} from "../../../../src/host/web/pages/form-fields.tsx";

const WRONG = [{ field: "year", says: "Write <2027>." }];

test("a field has its label, its hint and what is wrong with it", () => {
  const html = String(
    <Field name="year" label="Which year?" value={'"<19>'} errors={WRONG} hint="Like: 2027." />,
  );
  expect(html).toContain('<label for="year">Which year?</label>');
  expect(html).toContain('value="&quot;&lt;19&gt;"');
  expect(html).toContain('aria-describedby="year-hint year-wrong" aria-invalid="true"');
  expect(html).toMatch(/id="year-wrong">Write &lt;2027&gt;\./);
});

test("a field with nothing wrong and no hint is described by nothing", () => {
  const html = String(<Field name="garden" label="Which?" value="" errors={WRONG} />);
  expect(html).not.toMatch(/aria-|wrong|hint/);
});

test("a list and radios have the chosen one chosen", () => {
  const choices = [
    ["a", "A"],
    ["b", "B"],
  ] as const;
  expect(String(<Choice name="x" label="X" value="b" errors={[]} choices={choices} />)).toMatch(
    /value="b" selected/,
  );
  expect(String(<Radios name="x" label="X" value="b" choices={choices} />)).toMatch(
    /value="b" checked/,
  );
});

test("what is wrong stands above, each leading to its field", () => {
  const html = String(<ErrorSummary errors={[...WRONG, { field: "", says: "Else." }]} />);
  expect(html).toMatch(
    /role="alert"[\s\S]*<a href="#year">Write &lt;2027&gt;\.<\/a>[\s\S]*<li>Else\.<\/li>/,
  );
  expect(
    String(
      <div>
        <ErrorSummary errors={[]} />
      </div>,
    ),
  ).toBe("<div></div>");
});

test("what a page does not show is carried along as it was typed", () => {
  expect(String(<Carried fields={[["people.0.name", '<"&>']]} />)).toBe(
    '<input type="hidden" name="people.0.name" value="&lt;&quot;&amp;&gt;"/>',
  );
});
