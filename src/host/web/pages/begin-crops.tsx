import type { CropName } from "../../../app/index.ts";
import type { AmountUnit, FirstCrop } from "../../../app/records.ts";
import { type FormPageProps, formPage } from "./begin.tsx";
import { Choice, Field, type FieldError } from "./form-fields.tsx";

type CropsProps = FormPageProps & { readonly offers: readonly CropName[] };

/** The fifth page: the crops to tick, those of most gardens first. */
export function cropsPage({ form, errors, offers }: CropsProps): string {
  const ticked = form.answers.crops.map(({ crop }) => crop);
  const popular = offers.filter((offer) => offer.popular);
  const others = offers.filter((offer) => !offer.popular);
  return formPage({
    ...{ step: "crops", form, errors },
    children: (
      <>
        <p>Tick what you grow this year. How much of it comes next.</p>
        <h2 id="crop">In most gardens</h2>
        <Ticks offers={popular} ticked={ticked} />
        <details open={others.some(({ one }) => ticked.includes(one))}>
          <summary>All {others.length} others, by name</summary>
          <Ticks offers={others} ticked={ticked} />
        </details>
        <p class="faint">
          Something is missing? On the last page the plan can be changed as text, and a crop of your
          own named there by one that grows alike: papalo: like cilantro.
        </p>
      </>
    ),
  });
}

function Ticks({
  offers,
  ticked,
}: {
  readonly offers: readonly CropName[];
  readonly ticked: readonly string[];
}) {
  return (
    <ul class="crops">
      {offers.map(({ key, name, one }) => (
        <li>
          <label>
            <input type="checkbox" name="crop" value={key} checked={ticked.includes(one)} /> {name}
          </label>
        </li>
      ))}
    </ul>
  );
}

/** The sixth page: of each ticked crop how much, where, how it begins, and since when it stands. */
export function amountsPage({ form, errors, offers }: CropsProps): string {
  const { answers } = form;
  const beds = answers.beds.flatMap(({ name }, i) =>
    name === "" ? [] : [[String(i), name] as const],
  );
  const metric = answers.measures === "metric";
  return formPage({
    ...{ step: "amounts", form, errors },
    children: (
      <>
        <p>
          All of it may be left empty and said later. A number makes seed, rows and work countable.
        </p>
        {answers.crops.map((crop, i) => (
          <CropRow
            {...{ crop, i, errors, metric }}
            offer={offers.find(({ one }) => one === crop.crop) ?? null}
            beds={beds}
          />
        ))}
      </>
    ),
  });
}

type CropRowProps = {
  readonly crop: FirstCrop;
  readonly i: number;
  readonly errors: readonly FieldError[];
  readonly metric: boolean;
  readonly offer: CropName | null;
  readonly beds: readonly (readonly [string, string])[];
};

function CropRow({ crop, i, errors, metric, offer, beds }: CropRowProps) {
  const at = `crops.${i}`;
  const starts = offer?.starts ?? [];
  return (
    <fieldset class="row">
      <legend>{offer?.name ?? crop.crop}</legend>
      <div class="pair">
        <div>
          <Field
            name={`${at}.amount`}
            label="How much"
            value={crop.amount}
            errors={errors}
            mode="decimal"
          />
        </div>
        <div>
          <Choice
            name={`${at}.unit`}
            label="of what"
            value={crop.unit}
            errors={errors}
            choices={unitsFor(offer, crop, metric)}
          />
        </div>
      </div>
      {beds.length > 0 && (
        <Choice
          name={`${at}.bed`}
          label="Where"
          value={crop.bed === null ? "" : String(crop.bed)}
          errors={errors}
          choices={[["", "in no bed yet"], ...beds]}
        />
      )}
      {starts.length > 1 && (
        <Choice
          name={`${at}.start`}
          label="How it begins"
          value={crop.start}
          errors={errors}
          choices={[
            ["", `as is usual: ${START_SAYS[starts[0] ?? ""] ?? starts[0]}`],
            ...starts.map((start) => [start, START_SAYS[start] ?? start] as const),
          ]}
        />
      )}
      {(offer?.mayStand || crop.since !== "") && (
        <Field
          name={`${at}.since`}
          label="Is it in the ground already? Since when?"
          value={crop.since}
          errors={errors}
          hint="Like: Oct 2026. Empty: it is planted this year."
        />
      )}
    </fieldset>
  );
}

const START_SAYS: Readonly<Record<string, string>> = {
  "seed indoors": "sown indoors",
  "seed outdoors": "sown where it grows",
  "winter-sown": "sown outdoors in boxes, in winter",
  plants: "bought as plants",
};

function unitsFor(
  offer: CropName | null,
  { unit }: FirstCrop,
  metric: boolean,
): readonly (readonly [AmountUnit, string])[] {
  const rows: readonly (readonly [AmountUnit, string])[] = [
    ["plants", "plants"],
    ["rows", "rows"],
    ["length", metric ? "metres of row" : "feet of row"],
  ];
  const own = [offer?.unit, unit].flatMap((each) =>
    each === undefined || rows.some(([known]) => known === each) ? [] : [[each, each] as const],
  );
  return [...new Map([...own, ...rows])];
}
