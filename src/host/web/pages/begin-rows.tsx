import type { BedKind, FirstBed, FirstPerson } from "../../../app/records.ts";
import { type FormPageProps, formPage } from "./begin.tsx";
import { Choice, Field, type FieldError } from "./form-fields.tsx";

/** A page of rows, with so many of them that are empty. */
type RowsPageProps = FormPageProps & { readonly spare: number };

const NOBODY: FirstPerson = { name: "", gardens: "", home: "" };

/** The third page: who gardens, a row each. */
export function peoplePage({ form, errors, spare }: RowsPageProps): string {
  const rows = [...form.answers.people, ...Array.from({ length: spare }, () => NOBODY)];
  return formPage({
    ...{ step: "people", form, errors, more: "More rows" },
    children: (
      <>
        <p>
          Each gets a link and a calendar of their own. Leave all rows empty for one calendar for
          everybody. Hours may be left out; with them, each person's jobs stand in their own hours.
        </p>
        {rows.map((person, i) => (
          <PersonRow person={person} i={i} errors={errors} />
        ))}
      </>
    ),
  });
}

type RowProps = { readonly i: number; readonly errors: readonly FieldError[] };

function PersonRow({ person, i, errors }: RowProps & { readonly person: FirstPerson }) {
  const at = `people.${i}`;
  return (
    <fieldset class="row">
      <legend>{person.name || `Person ${i + 1}`}</legend>
      <Field name={`${at}.name`} label="Name" value={person.name} errors={errors} />
      <Field
        name={`${at}.gardens`}
        label="When do they garden?"
        value={person.gardens}
        errors={errors}
        hint="Like: Wed 18-19 and Sat 9-12."
      />
      <Field
        name={`${at}.home`}
        label="When are they at home?"
        value={person.home}
        errors={errors}
        hint="Like: weekdays from 17:30 and weekends. Plants that harden off are carried out and in then."
      />
    </fieldset>
  );
}

const NO_BED: FirstBed = { name: "", kind: "bed", length: "", width: "", count: "", holds: "" };

const KIND_SAYS: Readonly<Record<BedKind, string>> = {
  bed: "A bed",
  bags: "Grow bags",
  pots: "Pots or tubs",
  greenhouse: "A greenhouse",
  tunnel: "A tunnel",
};

/** The fourth page: the beds, a row each. */
export function bedsPage({ form, errors, spare }: RowsPageProps): string {
  const rows = [...form.answers.beds, ...Array.from({ length: spare }, () => NO_BED)];
  const metric = form.answers.measures === "metric";
  return formPage({
    ...{ step: "beds", form, errors, more: "More rows" },
    children: (
      <>
        <p>
          In the order in which you walk by them. Sizes may be left out, and so may all the beds;
          with them, rows, seed and water are told in numbers.
        </p>
        {rows.map((bed, i) => (
          <BedRow bed={bed} i={i} errors={errors} metric={metric} />
        ))}
      </>
    ),
  });
}

function BedRow({
  bed,
  i,
  errors,
  metric,
}: RowProps & { readonly bed: FirstBed; readonly metric: boolean }) {
  const at = `beds.${i}`;
  const field = (name: "length" | "width" | "count" | "holds", label: string) => (
    <div>
      <Field
        name={`${at}.${name}`}
        label={label}
        value={bed[name]}
        errors={errors}
        mode={name === "count" ? "numeric" : "decimal"}
      />
    </div>
  );
  return (
    <fieldset class="row">
      <legend>{bed.name || `Bed ${i + 1}`}</legend>
      <Field
        name={`${at}.name`}
        label="Name"
        value={bed.name}
        errors={errors}
        {...(i === 0 && { hint: "Like: South bed." })}
      />
      <Choice
        name={`${at}.kind`}
        label="What is it?"
        value={bed.kind}
        errors={errors}
        choices={Object.entries(KIND_SAYS)}
      />
      <div class="pair when-sides">
        {field("length", metric ? "Length in metres" : "Length in feet")}
        {field("width", metric ? "Width in metres" : "Width in feet")}
      </div>
      <div class="pair when-many">
        {field("count", "How many")}
        {field("holds", metric ? "Litres in each" : "Gallons in each")}
      </div>
    </fieldset>
  );
}
