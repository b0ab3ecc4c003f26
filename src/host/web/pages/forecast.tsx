/** The coming nights with their lows, whose figures they are, and how old; empty where they are fresh. */
export type ForecastShown = {
  readonly nights: readonly {
    readonly name: string;
    readonly low: string;
    /** What stands in the beds that the night asks something for; empty: nothing. */
    readonly asksFor: string;
  }[];
  readonly source: string;
  readonly age: string;
};

/** A list of the coming nights against what stands in the beds, with its source as the source wants it said. */
export function ForecastNights({ nights, source, age }: ForecastShown) {
  return (
    <>
      <h2>The coming nights</h2>
      {age !== "" && <p>{age}</p>}
      {nights.length > 0 && (
        <p class="text">
          {nights
            .map(
              ({ name, low, asksFor }) => `${name}: ${low}${asksFor === "" ? "" : `. ${asksFor}`}`,
            )
            .join("\n")}
        </p>
      )}
      <p>
        <small>{source}</small>
      </p>
    </>
  );
}
