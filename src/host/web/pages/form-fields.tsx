import type { Child } from "hono/jsx";

/** Something wrong with a field, by the field's name, as it is told beside it and above the form. */
export type FieldError = { readonly field: string; readonly says: string };

/** A field of a form: its name, its question, what was typed, and everything that is wrong on its page. */
export type FieldProps = {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly errors: readonly FieldError[];
  readonly hint?: string | undefined;
  readonly mode?: "numeric" | "decimal";
};

/** A field of one line, with its hint and what is wrong with it. Browsers may fill it in again when one goes back, which `autocomplete="off"` would forbid. */
export function Field({ name, label, value, errors, hint, mode }: FieldProps) {
  return (
    <>
      <label for={name}>{label}</label>
      <input
        id={name}
        name={name}
        value={value}
        class="wide"
        inputmode={mode}
        {...describing(name, errors, hint)}
      />
      <Beside name={name} errors={errors} hint={hint} />
    </>
  );
}

/** One of several, from a list. */
export type ChoiceProps = Omit<FieldProps, "mode"> & {
  readonly choices: readonly (readonly [value: string, says: string])[];
};

/** A list to choose one from, with its hint and what is wrong with it. */
export function Choice({ name, label, value, errors, hint, choices }: ChoiceProps) {
  return (
    <>
      <label for={name}>{label}</label>
      <select id={name} name={name} {...describing(name, errors, hint)}>
        {choices.map(([each, says]) => (
          <option value={each} selected={each === value}>
            {says}
          </option>
        ))}
      </select>
      <Beside name={name} errors={errors} hint={hint} />
    </>
  );
}

/** One of several, all of them in sight. The question is the group's. */
export function Radios({ name, label, value, choices }: Omit<ChoiceProps, "errors" | "hint">) {
  return (
    <fieldset id={name}>
      <legend>{label}</legend>
      {choices.map(([each, says]) => (
        <label>
          <input type="radio" name={name} value={each} checked={each === value} /> {says}
        </label>
      ))}
    </fieldset>
  );
}

function Beside({ name, errors, hint }: Pick<FieldProps, "name" | "errors" | "hint">): Child {
  const wrong = errors.filter(({ field }) => field === name);
  return (
    <>
      {hint && (
        <p class="faint" id={`${name}-hint`}>
          {hint}
        </p>
      )}
      {wrong.length > 0 && (
        <p class="wrong" id={`${name}-wrong`}>
          {wrong.map(({ says }) => says).join(" ")}
        </p>
      )}
    </>
  );
}

function describing(name: string, errors: readonly FieldError[], hint: string | undefined) {
  const wrong = errors.some(({ field }) => field === name);
  const ids = [...(hint ? [`${name}-hint`] : []), ...(wrong ? [`${name}-wrong`] : [])];
  return {
    ...(ids.length > 0 && { "aria-describedby": ids.join(" ") }),
    ...(wrong && { "aria-invalid": "true" as const }),
  };
}

/** What is wrong on a page, above it, each leading to its field; nothing where nothing is. */
export function ErrorSummary({ errors }: { readonly errors: readonly FieldError[] }): Child {
  if (errors.length === 0) return null;
  return (
    <section role="alert" class="errors warning">
      <h2>Not quite yet</h2>
      <ul>
        {errors.map(({ field, says }) => (
          <li>{field === "" ? says : <a href={`#${field}`}>{says}</a>}</li>
        ))}
      </ul>
    </section>
  );
}

/** Fields that a page does not show, so that the next one still has them. */
export function Carried({ fields }: { readonly fields: readonly (readonly [string, string])[] }) {
  return (
    <>
      {fields.map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
    </>
  );
}
