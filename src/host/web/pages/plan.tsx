import { type Problem, sayAdvice } from "../../../base/index.ts";
import { type Frame, renderPage } from "./frame.tsx";

/** Where the script of the plan's page is served. */
export const PLAN_SCRIPT = "/plan.js";

/** One version of a year's plan: its number and when it was saved, in words. */
export type VersionRow = { readonly version: number; readonly when: string };

/** A line that another version has and the one it is held against has not, or the other way about. */
export type Difference = { readonly side: "added" | "removed"; readonly line: string };

/** What the page of a plan has to say above the text. */
export type PlanNotice =
  | { readonly kind: "nothing" }
  | { readonly kind: "not begun"; readonly from: number }
  | { readonly kind: "saved"; readonly version: number }
  | { readonly kind: "not saved"; readonly why: string }
  | {
      readonly kind: "another";
      readonly version: number;
      readonly both: boolean;
      readonly differences: readonly Difference[] | null;
    };

/** A year's plan as text, to be changed; `base` is the version that a change starts from, 0 where there is none yet. */
export type PlanPageProps = {
  readonly year: number;
  readonly years: readonly number[];
  readonly base: number;
  readonly text: string;
  readonly word: PlanNotice;
  readonly problems: readonly Problem[];
  readonly versions: readonly VersionRow[];
  /** Whether the plan has beds to be drawn. */
  readonly beds: boolean;
};

/** The plan of a year as text, what is wrong or doubtful in it beside its lines, and its versions. */
export function planPage(frame: Frame, shown: PlanPageProps): string {
  const { year, years, base, text, word, problems, versions, beds } = shown;
  return renderPage({
    title: `The plan for ${year}`,
    frame,
    script: PLAN_SCRIPT,
    children: (
      <>
        <Notice word={word} />
        <ProblemList text={text} problems={problems} />
        <div class="side-by-side">
          <div>
            <form method="post" data-draft="yes" data-unsaved={isUnsaved(word) ? "yes" : undefined}>
              <input type="hidden" name="base" value={String(base)} />
              <PlanText text={text} />
              <p class="onward">
                <button type="submit" class="fill">
                  Save
                </button>
                <span id="saving" role="status" />
              </p>
            </form>
            <OtherYears frame={frame} year={year} years={years} />
            {versions.length > 1 && <Versions year={year} base={frame.base} versions={versions} />}
          </div>
          <Pictures base={`${frame.base}plan/${year}/`} beds={beds} />
        </div>
      </>
    ),
  });
}

/** Whether the text on the page is another than the one that is saved. */
function isUnsaved({ kind }: PlanNotice): boolean {
  return kind === "not saved" || kind === "another" || kind === "not begun";
}

type OtherYearsProps = Pick<PlanPageProps, "year" | "years"> & { readonly frame: Frame };

function OtherYears({ frame, year, years }: OtherYearsProps) {
  const others = years.filter((other) => other !== year);
  if (others.length === 0) return null;
  return (
    <p>
      {"Other years: "}
      {others.map((other, i) => (
        <>
          {i > 0 && ", "}
          <a href={`${frame.base}plan/${other}`}>{other}</a>
        </>
      ))}
    </p>
  );
}

/** The plan in pictures as it is saved; its script draws them anew for the text as it was last checked, and folds them on a phone. */
function Pictures({ base, beds }: { readonly base: string; readonly beds: boolean }) {
  return (
    <details id="pictures" open>
      <summary>The plan in pictures</summary>
      <p class="faint" role="status">
        The plan as it is saved.
      </p>
      <Picture
        src={`${base}season.svg`}
        alt="Bed by bed, each planting as a leaf along the months, from the day it goes in to its end"
        heightPx={4200}
      />
      {beds && (
        <Picture
          src={`${base}beds.svg`}
          alt="Every bed from above, to one scale, with its rows and plants and their names, as they stand today or when most stands"
          heightPx={1000}
        />
      )}
    </details>
  );
}

/** A drawing, about how high it is [px] where it is 390 px wide, and what is seen in it. */
type PictureProps = { readonly src: string; readonly alt: string; readonly heightPx: number };

function Picture({ src, alt, heightPx }: PictureProps) {
  return <img src={src} data-src={src} alt={alt} width={390} height={heightPx} loading="lazy" />;
}

/** The field a plan is written in; its script numbers the lines and tells problems while one writes. */
export function PlanText({ text }: { readonly text: string }) {
  return (
    <>
      <label for="text">The plan, as text</label>
      <textarea
        id="text"
        name="text"
        rows={24}
        spellcheck={false}
        autocapitalize="off"
        autocomplete="off"
        wrap="off"
      >
        {/* The first line's end is the markup's own and is left out by every reader. */}
        {`\n${text}`}
      </textarea>
      <div id="checked" role="status" />
    </>
  );
}

function Notice({ word }: { readonly word: PlanNotice }) {
  switch (word.kind) {
    case "nothing":
      return null;
    case "not begun":
      return <p>Nothing is saved for this year yet. It begins as the plan for {word.from} was.</p>;
    case "saved":
      return <p role="status">Saved as version {word.version}. The calendars follow.</p>;
    case "not saved":
      return <p role="alert">{word.why}</p>;
    case "another":
      return <Another {...word} />;
  }
}

function Another({ version, both, differences }: Extract<PlanNotice, { kind: "another" }>) {
  return (
    <section role="alert">
      <p>
        While you were writing, somebody saved version {version}. Yours is not saved yet.{" "}
        {both
          ? "Below stand their changes and yours together: look them through, and save."
          : "Yours stands below as you wrote it, and touches the same lines: bring over what you want of theirs, and save."}
      </p>
      <p>What they changed:</p>
      <pre>{linesOf(differences, { added: "now ", removed: "was " })}</pre>
    </section>
  );
}

/** The lines that something is wrong with or doubtful in, each with what it is; nothing where all is well. */
export function ProblemList({
  text,
  problems,
}: {
  readonly text: string;
  readonly problems: readonly Problem[];
}) {
  if (problems.length === 0) return null;
  const lines = text.split("\n");
  const numbers = [...new Set(problems.map(({ at }) => at.line))].sort((a, b) => a - b);
  const wrong = problems.some(({ weight }) => weight === "problem");
  return (
    <section class="beside" aria-labelledby="beside">
      <h2 id="beside">{wrong ? "What has to be put right" : "Worth a second look"}</h2>
      <dl>
        {numbers.map((number) => (
          <>
            <dt>
              <span class="faint" data-line={String(number)}>
                line {number}
              </span>{" "}
              <code>{lines[number - 1]?.trim() ?? ""}</code>
            </dt>
            {problems
              .filter(({ at }) => at.line === number)
              .map((problem) => (
                <dd>
                  {problem.weight === "doubt" && wrong ? "Doubtful: " : ""}
                  {sayAdvice(problem)}
                </dd>
              ))}
          </>
        ))}
      </dl>
    </section>
  );
}

function Versions({
  year,
  base,
  versions,
}: {
  readonly year: number;
  readonly base: string;
  readonly versions: readonly VersionRow[];
}) {
  return (
    <details>
      <summary>Earlier versions</summary>
      <ul>
        {versions.map(({ version, when }, i) => (
          <li>
            {i === 0 ? (
              `version ${version}, ${when}, in use`
            ) : (
              <a href={`${base}plan/${year}/${version}`}>
                version {version}, {when}
              </a>
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** An earlier version, and a way to put it in force again; `base` is the version in force. */
export type VersionPageProps = {
  readonly year: number;
  readonly version: number;
  readonly text: string;
  readonly base: number;
  readonly differences: readonly Difference[] | null;
};

/** Differences a line each behind what says where they stand. */
function linesOf(
  differences: readonly Difference[] | null,
  where: Readonly<Record<Difference["side"], string>>,
): string {
  if (differences === null) return "Too many lines differ to show them.";
  if (differences.length === 0) return "Nothing.";
  return differences.map(({ side, line }) => `${where[side]} ${line}`).join("\n");
}

/** One version of a plan to read and to restore, which saves its text as the newest. */
export function versionPage(frame: Frame, shown: VersionPageProps): string {
  const { year, version, text, base, differences } = shown;
  return renderPage({
    title: `Version ${version} of the plan for ${year}`,
    frame,
    children: (
      <>
        <form method="post" action={`${frame.base}plan/${year}`}>
          <input type="hidden" name="base" value={String(base)} />
          <input type="hidden" name="text" value={text} />
          <button type="submit">Use this version again</button>
        </form>
        <p class="faint">It is saved as a new version; none is lost.</p>
        <h2>What differs from the one in use</h2>
        <pre>{linesOf(differences, { added: "here ", removed: "not here " })}</pre>
        <h2>The whole text</h2>
        <pre>{text}</pre>
      </>
    ),
  });
}
