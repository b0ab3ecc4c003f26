import type { SampleMonth } from "../../../app/index.ts";
import type { FirstAnswers } from "../../../app/records.ts";
import type { FormStep } from "../first-form.ts";
import { type FormPageProps, formPage, titleOfStep } from "./begin.tsx";
import type { FieldError } from "./form-fields.tsx";

/** The last page: what was said, what is doubtful in it, a month of what comes of it, and the plan as text; `frosts` in words. */
export type LookPageProps = FormPageProps & {
  readonly frosts: readonly string[];
  readonly doubts: readonly FieldError[];
  readonly sample: SampleMonth | null;
  readonly text: string;
  /** What is to be said of the text; null: nothing. */
  readonly said: string | null;
};

/** Everything looked over before it is saved. */
export function lookPage({
  form,
  errors,
  frosts,
  doubts,
  sample,
  text,
  said,
}: LookPageProps): string {
  const { answers } = form;
  return formPage({
    ...{ step: "look", form, errors, next: "Save, and make the garden" },
    children: (
      <>
        {said !== null && (
          <p role="status" class="note">
            {said}
          </p>
        )}
        <dl class="said">
          <Said
            step="garden"
            lines={[`${answers.garden}, ${answers.year}`, answers.measures, answers.clock]}
          />
          <Said step="frost" lines={form.way === "numbers" ? [...frosts, GUESSED] : frosts} />
          <Said step="people" lines={namesOf(answers.people, "One calendar for everybody")} />
          <Said step="beds" lines={namesOf(answers.beds, "No beds by name")} />
          <Said
            step="amounts"
            lines={answers.crops.map((crop) => sayCrop(crop, answers))}
            other="crops"
          />
        </dl>
        {doubts.length > 0 && <Doubts doubts={doubts} />}
        {sample && <Sample sample={sample} />}
        <details>
          <summary>The plan as text</summary>
          <pre tabindex={0}>{text}</pre>
          <p>
            <button type="submit" name="step" value="text">
              Change it as text
            </button>
          </p>
        </details>
      </>
    ),
  });
}

const GUESSED = "Guessed by the two temperatures. Put your own there once you know them.";

const namesOf = (rows: readonly { readonly name: string }[], none: string) => {
  const names = rows.map(({ name }) => name).filter(Boolean);
  return names.length === 0 ? [none] : names;
};

function sayCrop(
  { crop, amount, unit, bed }: FirstAnswers["crops"][number],
  { beds, measures }: FirstAnswers,
): string {
  const row = measures === "metric" ? "m of row" : "ft of row";
  const much = amount === "" ? "" : `: ${amount} ${unit === "length" ? row : unit}`;
  const place = bed === null ? "" : (beds[bed]?.name ?? "");
  return `${crop}${much}${place === "" ? "" : `, ${place}`}`;
}

type SaidProps = {
  readonly step: FormStep;
  readonly lines: readonly string[];
  readonly other?: FormStep;
};

function Said({ step, lines, other }: SaidProps) {
  return (
    <div>
      <dt>{titleOfStep(step)}</dt>
      <dd>
        <ul>
          {lines.map((line) => (
            <li>{line}</li>
          ))}
        </ul>
      </dd>
      <dd class="onward">
        <button type="submit" name="step" value={step}>
          Change<span class="unseen">: {titleOfStep(step)}</span>
        </button>
        {other && (
          <button type="submit" name="step" value={other}>
            Other crops
          </button>
        )}
      </dd>
    </div>
  );
}

function Doubts({ doubts }: { readonly doubts: readonly FieldError[] }) {
  return (
    <section>
      <h2>Worth a second look</h2>
      <p>None of this keeps the garden from being made.</p>
      <ul>
        {doubts.map(({ says }) => (
          <li>{says}</li>
        ))}
      </ul>
    </section>
  );
}

function Sample({ sample: { name, jobs, more } }: { readonly sample: SampleMonth }) {
  return (
    <section>
      <h2>A month of it: {name}</h2>
      <table class="month">
        <tbody>
          {jobs.map(({ day, title }) => (
            <tr>
              <th scope="row">{day}</th>
              <td>{title}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {more > 0 && <p class="faint">and {more} more that month.</p>}
    </section>
  );
}
