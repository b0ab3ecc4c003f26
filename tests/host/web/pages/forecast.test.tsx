import { renderToString } from "hono/jsx/dom/server";
import { expect, test } from "vitest";
import { ForecastNights } from "../../../../src/host/web/pages/forecast.tsx";

test("nights are a line each with what they ask something for, and nothing is said of the age of what is fresh", () => {
  const nights = [
    { name: "Tonight", low: "2 °C", asksFor: "" },
    { name: "Tomorrow night", low: "-1 °C", asksFor: "South bed: tomatoes" },
  ];
  const html = renderToString(<ForecastNights nights={nights} source="Whose" age="" />);
  expect(html).toContain("Tonight: 2 °C\nTomorrow night: -1 °C. South bed: tomatoes");
  expect(html.match(/<p/g)).toHaveLength(2);
});
