import type { Town } from "../../towns/find-towns.ts";
import { FROST_WAYS, type FrostWay } from "../first-form.ts";
import { type FormPageProps, formPage } from "./begin.tsx";
import { Choice, Field, Radios } from "./form-fields.tsx";

/** The first page with every clock there is; `restore` is where a garden's archive goes instead. */
export type GardenPageProps = FormPageProps & {
  readonly zones: readonly string[];
  readonly restore: string;
};

/** The first page: the garden's name, its year, measures and clock. */
export function gardenPage({ form, errors, zones, restore }: GardenPageProps): string {
  const { garden, year, measures, clock } = form.answers;
  const choose: readonly (readonly [string, string])[] = clock === "" ? [["", "Choose one"]] : [];
  return formPage({
    ...{ step: "garden", form, errors, below: <Restore to={restore} /> },
    children: (
      <>
        <p>
          Seven short pages, then the calendars are there. Go back whenever you like: nothing that
          you typed is lost. Everything can be changed later.
        </p>
        <Field name="garden" label="What is the garden called?" value={garden} errors={errors} />
        <Field
          name="year"
          label="For which year?"
          value={year}
          errors={errors}
          mode="numeric"
          hint="South of the equator: the year in which its spring begins."
        />
        <Radios
          name="measures"
          label="Measures"
          value={measures}
          choices={[
            ["metric", "metric"],
            ["inches and °F", "inches and °F"],
          ]}
        />
        <Choice
          name="clock"
          label="Whose clock does it go by?"
          value={clock}
          errors={errors}
          choices={[...choose, ...zones.map((zone) => [zone, zone.replaceAll("_", " ")] as const)]}
        />
      </>
    ),
  });
}

function Restore({ to }: { readonly to: string }) {
  return (
    <details>
      <summary>I have the archive of a garden</summary>
      <form method="post" action={to} enctype="multipart/form-data">
        <label for="archive">The archive, a .zip file that a Sowbell made</label>
        <input class="wide" id="archive" name="archive" type="file" accept=".zip" required />
        <button type="submit">Make the garden from it</button>
      </form>
    </details>
  );
}

/** What was found out about the place: towns of its name, frost dates in words, or why there are none. */
export type FrostNotice =
  | { readonly kind: "towns"; readonly towns: readonly Town[] }
  | { readonly kind: "found"; readonly says: readonly string[] }
  | { readonly kind: "silent"; readonly says: string };

/** The second page: frosts by their dates, by the place, or by two temperatures. `asks`: the place's years can be asked for here. */
export function frostPage({
  form,
  errors,
  notice,
  asks,
}: FormPageProps & { readonly notice: FrostNotice | null; readonly asks: boolean }): string {
  const { answers, south } = form;
  const ways = FROST_WAYS.filter((way) => asks || way !== "place");
  return formPage({
    ...{ step: "frost", form, errors },
    children: (
      <>
        {notice && notice.kind !== "towns" && <Notice notice={notice} />}
        <fieldset id="way">
          <legend>What do you know?</legend>
          {ways.map((way) => (
            <label>
              <input type="radio" name="way" value={way} checked={way === form.way} />{" "}
              {WAY_SAYS[way]}
            </label>
          ))}
        </fieldset>
        <div class="when when-dates">
          <Field
            name="lastFrost"
            label="The usual last frost of spring"
            value={answers.lastFrost}
            errors={errors}
            hint="Like: about 6 May. Or the early, the usual and the late one: 20 Apr, 6 May, 21 May. Or: none. Neighbours know it."
          />
          <Field
            name="firstFrost"
            label="The usual first frost of autumn"
            value={answers.firstFrost}
            errors={errors}
            hint="Like: about 2 Oct. Or: none."
          />
        </div>
        <div class="when when-dates when-numbers">
          <Field
            name="hottest"
            label="How hot are the hottest month's afternoons, usually?"
            value={answers.hottest}
            errors={errors}
            hint="Like: 28 °C, or 82 °F."
          />
          <Field
            name="coldest"
            label="How cold are the coldest month's nights, usually?"
            value={answers.coldest}
            errors={errors}
            hint="Like: -8 °C, or 18 °F. With the frost dates, both may be left out; days are then told wider."
          />
        </div>
        <Field
          name="town"
          label="The town, or a larger one near by"
          value={form.town}
          errors={errors}
          hint="Like: Helena. It is looked up here, and nobody is asked. Leave it empty if you know latitude and longitude."
        />
        {notice?.kind === "towns" ? (
          <Towns towns={notice.towns} />
        ) : (
          <Field
            name="where"
            label="Latitude and longitude"
            value={answers.where}
            errors={errors}
            hint="Like: 46.59, -112.04. Hold a finger on your place on the phone's map, and both come up; the compass shows them too. Length of day hangs on the first. Where the frost dates are known, town and numbers may be left out."
          />
        )}
        <div class="when when-numbers">
          <Radios
            name="half"
            label="Without a latitude: which side of the equator?"
            value={south ? "south" : "north"}
            choices={[
              ["north", "north"],
              ["south", "south"],
            ]}
          />
        </div>
        {asks && (
          <fieldset>
            <legend>The nights ahead</legend>
            <label>
              <input
                type="checkbox"
                id="forecast"
                name="forecast"
                value="Open-Meteo"
                checked={answers.forecast !== ""}
              />{" "}
              Ask Open-Meteo for this year's weather, so that frost is warned of days ahead
            </label>
            <p class="faint">
              It needs latitude and longitude. They go there to a tenth of a degree, about ten
              kilometres, four times a day at the most, and nothing else goes.
            </p>
          </fieldset>
        )}
      </>
    ),
  });
}

const WAY_SAYS: Readonly<Record<FrostWay, string>> = {
  dates: "About when the last and the first frost come",
  place:
    "Only where it lies: ask Open-Meteo once for the last thirty years there. The place goes to it to a tenth of a degree, about ten kilometres, and nothing else",
  numbers: "Only how hot and how cold it gets: guess the frosts by that",
};

/** Towns of a name, to choose one. */
function Towns({ towns }: { readonly towns: readonly Town[] }) {
  return (
    <div class="note" role="status">
      <Radios
        name="where"
        label="Which of these?"
        value={towns.length === 1 ? (towns[0]?.where ?? "") : ""}
        choices={towns.map(({ name, where }) => [where, name])}
      />
      <p class="faint">Towns by GeoNames, CC BY 4.0.</p>
    </div>
  );
}

type PlaceNotice = Exclude<FrostNotice, { readonly kind: "towns" }>;

function Notice({ notice }: { readonly notice: PlaceNotice }) {
  if (notice.kind === "silent")
    return (
      <p role="alert" class="warning">
        {notice.says}
      </p>
    );
  return (
    <section role="status" class="note">
      <p>By the last thirty years there:</p>
      <ul>
        {notice.says.map((line) => (
          <li>{line}</li>
        ))}
      </ul>
    </section>
  );
}
