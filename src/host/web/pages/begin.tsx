import type { Child } from "hono/jsx";
import { type FirstForm, type FormStep, fieldsOf, STEPS, stepOf } from "../first-form.ts";
import { Carried, ErrorSummary, type FieldError } from "./form-fields.tsx";
import { renderPage } from "./frame.tsx";

/** A page of the form: all that was typed so far, and what is wrong on this page. */
export type FormPageProps = {
  readonly form: FirstForm;
  readonly errors: readonly FieldError[];
};

/** What each page is called. */
const TITLES: Readonly<Record<FormStep, string>> = {
  garden: "A new garden",
  frost: "When does it freeze?",
  people: "Who gardens?",
  beds: "The beds",
  crops: "What grows there",
  amounts: "How much of each",
  look: "Look it over",
};

/** The name of a page of the form. */
export function titleOfStep(step: FormStep): string {
  return TITLES[step];
}

/** How a page of the form goes on: `more` is a button that asks for further rows, `next` the words of the one that goes on. */
export type FormPageFrame = FormPageProps & {
  readonly step: FormStep;
  readonly next?: string;
  readonly more?: string;
  /** What stands below the form. */
  readonly below?: Child;
  readonly children: Child;
};

/** A page of the form: its fields, everything typed on the others, and the ways on and back, neither of which loses anything. */
export function formPage(shown: FormPageFrame): string {
  const { step, form, errors, next, more, below, children } = shown;
  const carried = fieldsOf(form).filter(([name]) => stepOf(name) !== step);
  const wrong = errors.length > 0;
  return renderPage({
    title: wrong ? `Not quite yet: ${TITLES[step]}` : TITLES[step],
    frame: null,
    children: (
      <>
        <p class="facts">
          Step {STEPS.indexOf(step) + 1} of {STEPS.length}
        </p>
        <ErrorSummary errors={errors} />
        <form method="post" class="rows" novalidate>
          <Carried fields={[["at", step], ...carried]} />
          {children}
          <p class="onward">
            <button type="submit" name="step" value="next" class="fill">
              {next ?? "Go on"}
            </button>
            {more && (
              <button type="submit" name="step" value="more">
                {more}
              </button>
            )}
            {form.looked && step !== "look" && (
              <button type="submit" name="step" value="look">
                Back to the overview
              </button>
            )}
            {step !== "garden" && (
              <button type="submit" name="step" value="back">
                Go back
              </button>
            )}
          </p>
        </form>
        {below}
      </>
    ),
  });
}
