import type { FirstAnswers } from "../../../app/index.ts";
import type { Problem } from "../../../base/index.ts";
import { renderPage } from "./frame.tsx";
import { PLAN_SCRIPT, PlanText, ProblemList } from "./plan.tsx";

/** The answers of the short form as they were typed: one string a field. */
export type FormAnswers = {
  readonly [Name in (typeof FIELDS)[number]]: string;
};

const MEASURES: readonly FirstAnswers["measures"][] = ["inches and °F", "metric"];

/** The fields of the first page, in its order. */
export const FIELDS = [
  "garden",
  "year",
  "measures",
  "clock",
  "latitude",
  "lastFrost",
  "firstFrost",
  "hottest",
  "coldest",
  "people",
  "beds",
] as const;

/**
 * The first page: place, frost dates, people and beds, with what was typed so far and what is wrong with it. `restore`: where a
 * garden's archive goes instead.
 */
export function gardenFormPage(
  formAnswers: FormAnswers,
  zones: readonly string[],
  wrong: readonly string[],
  restore: string,
): string {
  return renderPage({
    title: "A new garden",
    frame: null,
    children: (
      <>
        <p>
          A few questions, then which crops, then the plan itself, which you can change whenever you
          like. Only the frost dates have to be about right; neighbours know them, and so does the
          nearest weather station.
        </p>
        {wrong.length > 0 && (
          <section role="alert">
            <h2>Not quite yet</h2>
            <ul>
              {wrong.map((line) => (
                <li>{line}</li>
              ))}
            </ul>
          </section>
        )}
        <form method="post" class="rows">
          <Field name="garden" label="What is the garden called?" value={formAnswers.garden} />
          <Field name="year" label="For which year?" value={formAnswers.year} mode="numeric" />
          <fieldset>
            <legend>Measures</legend>
            {MEASURES.map((value) => (
              <label>
                <input
                  type="radio"
                  name="measures"
                  value={value}
                  checked={formAnswers.measures === value}
                />{" "}
                {value}
              </label>
            ))}
          </fieldset>
          <label for="clock">Whose clock does it go by?</label>
          <select id="clock" name="clock" required>
            {formAnswers.clock === "" && <option value="">Choose one</option>}
            {zones.map((zone) => (
              <option value={zone} selected={zone === formAnswers.clock}>
                {zone.replaceAll("_", " ")}
              </option>
            ))}
          </select>
          <Field
            name="lastFrost"
            label="The usual last frost of spring"
            value={formAnswers.lastFrost}
            hint="Like: about 6 May. Or the early, the usual and the late one: 20 Apr, 6 May, 21 May. Or: none."
          />
          <Field
            name="firstFrost"
            label="The usual first frost of autumn"
            value={formAnswers.firstFrost}
            hint="Like: about 2 Oct. Or: none."
          />
          <Field
            name="hottest"
            label="How hot are the hottest month's afternoons, usually?"
            value={formAnswers.hottest}
            hint="Like: 28 °C, or 82 °F. Leave it empty if you don't know; dates are then told wider."
            optional
          />
          <Field
            name="coldest"
            label="How cold are the coldest month's nights, usually?"
            value={formAnswers.coldest}
            hint="Like: -8 °C, or 18 °F. Leave it empty if you don't know."
            optional
          />
          <Field
            name="latitude"
            label="Latitude, if you know it"
            value={formAnswers.latitude}
            hint="Like: 46.6, or -33.9 south of the equator. Day length hangs on it."
            optional
          />
          <Lines
            name="people"
            label="Who gardens? One name a line"
            value={formAnswers.people}
            hint="Each gets a calendar of their own. Leave it empty for one calendar for all."
          />
          <Lines
            name="beds"
            label="The beds, one a line, with their size"
            value={formAnswers.beds}
            hint="Like: South bed, 12 x 4 ft. The size may be left out, and so may all the beds."
          />
          <button type="submit" name="step" value="crops">
            On to the crops
          </button>
        </form>
        <details>
          <summary>I have the archive of a garden</summary>
          <form method="post" action={restore} enctype="multipart/form-data">
            <label for="archive">The archive, a .zip file that a Sowbell made</label>
            <input class="wide" id="archive" name="archive" type="file" accept=".zip" required />
            <button type="submit">Make the garden from it</button>
          </form>
        </details>
      </>
    ),
  });
}

type FieldProps = {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
};

function Field({
  name,
  label,
  value,
  hint,
  mode,
  optional = false,
}: FieldProps & { readonly mode?: "numeric"; readonly optional?: boolean }) {
  return (
    <>
      <label for={name}>{label}</label>
      <input
        id={name}
        name={name}
        value={value}
        class="wide"
        inputmode={mode}
        autocomplete="off"
        required={!optional}
        aria-describedby={hint ? `${name}-hint` : undefined}
      />
      {hint && (
        <p class="faint" id={`${name}-hint`}>
          {hint}
        </p>
      )}
    </>
  );
}

function Lines({ name, label, value, hint }: FieldProps) {
  return (
    <>
      <label for={name}>{label}</label>
      <textarea id={name} name={name} rows={4} aria-describedby={`${name}-hint`}>
        {`\n${value}`}
      </textarea>
      <p class="faint" id={`${name}-hint`}>
        {hint}
      </p>
    </>
  );
}

/** A crop to be ticked: its key and its name in the trade. */
export type CropRow = { readonly key: string; readonly name: string };

/** The second page: the crops to tick, each with its bed where there are beds. */
export function cropsPage(
  formAnswers: FormAnswers,
  crops: readonly CropRow[],
  beds: readonly string[],
): string {
  return renderPage({
    title: "What grows there",
    frame: null,
    children: (
      <>
        <p>
          Tick what you grow this year{beds.length > 1 ? ", and say in which bed" : ""}. How much of
          it, and what is missing here, comes next.
        </p>
        <form method="post" class="rows">
          {FIELDS.map((name) => (
            <input type="hidden" name={name} value={formAnswers[name]} />
          ))}
          <ul class="crops">
            {crops.map(({ key, name }) => (
              <li>
                <label>
                  <input type="checkbox" name="crop" value={key} /> {name}
                </label>
                {beds.length > 1 && (
                  <select name={`bed-${key}`} aria-label={`The bed for ${name}`}>
                    {beds.map((bed, at) => (
                      <option value={String(at)}>{bed}</option>
                    ))}
                  </select>
                )}
              </li>
            ))}
          </ul>
          <button type="submit" name="step" value="text">
            On to the plan
          </button>
        </form>
      </>
    ),
  });
}

/** The third page: the plan as text with what is wrong or doubtful in it, to be saved; `check` is where its script asks. */
export function firstTextPage({ text, check, problems, why }: FirstTextPageProps): string {
  return renderPage({
    title: "The plan",
    frame: null,
    script: PLAN_SCRIPT,
    children: (
      <>
        {why !== null && <p role="alert">{why}</p>}
        <p>
          This is the plan. Say how much of each crop behind its name, add what is missing, and save
          it. Everything in it can be changed later.
        </p>
        <ProblemList text={text} problems={problems} />
        <form method="post" class="plan" data-check={check}>
          <input type="hidden" name="base" value="0" />
          <PlanText text={text} />
          <button type="submit" name="step" value="save">
            Save, and make the garden
          </button>
        </form>
      </>
    ),
  });
}

/** What the third page shows; `why` where it could not be saved. */
export type FirstTextPageProps = {
  readonly text: string;
  readonly check: string;
  readonly problems: readonly Problem[];
  readonly why: string | null;
};
