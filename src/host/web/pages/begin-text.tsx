import type { Problem } from "../../../base/index.ts";
import { type FirstForm, fieldsOf } from "../first-form.ts";
import { Carried } from "./form-fields.tsx";
import { renderPage } from "./frame.tsx";
import { PLAN_SCRIPT, PlanText, ProblemList } from "./plan.tsx";

/** The plan as text before the garden is made: `check` is where its script asks, `said` what stands above it; null: nothing. */
export type FirstTextPageProps = {
  readonly form: FirstForm;
  readonly text: string;
  readonly textOf: string;
  readonly check: string;
  readonly problems: readonly Problem[];
  readonly said: string | null;
};

/** The plan as text with what is wrong or doubtful in it, to be saved; going back loses neither it nor any answer. */
export function firstTextPage(props: FirstTextPageProps): string {
  const { form, text, textOf, check, problems, said } = props;
  const carried = fieldsOf(form).filter(([name]) => name !== "text" && name !== "textOf");
  return renderPage({
    title: "The plan as text",
    frame: null,
    script: PLAN_SCRIPT,
    children: (
      <>
        {said !== null && (
          <p role="alert" class="warning">
            {said}
          </p>
        )}
        <p>Everything in it can be changed later, too.</p>
        <ProblemList text={text} problems={problems} />
        <form method="post" class="plan" data-check={check}>
          <Carried fields={[["at", "text"], ...carried, ["base", "0"], ["textOf", textOf]]} />
          <PlanText text={text} />
          <button type="submit" name="step" value="save-text" class="fill">
            Save, and make the garden
          </button>
          <button type="submit" name="step" value="look">
            Go back
          </button>
        </form>
      </>
    ),
  });
}
