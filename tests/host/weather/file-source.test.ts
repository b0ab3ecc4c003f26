import { expect, test } from "vitest";
import { fileSource } from "../../../src/host/weather/file-source.ts";
import { plainFile } from "../../garden/station/files.ts";
import { isoDay } from "../../gardens.ts";

const sourceOf = (text: string) =>
  fileSource({
    ...{ text, name: "station.csv", latitude: 46.6 },
    request: { file: "station.csv", columns: {}, where: [], unit: null },
  });
const today = isoDay("2021-03-01");

test("a local file answers both questions, and nobody wants to be named", () => {
  const source = sourceOf(plainFile());
  expect(source.attribution).toBeNull();
  expect(source.yearsBehind()).toMatchObject({
    ...{ kind: "good" },
    value: { file: expect.stringContaining("source: station.csv") },
  });
  expect(source.seasonSoFar({ today })).toMatchObject({
    ...{ kind: "good" },
    value: { source: "a file", asOf: today },
  });
});

test("a file that is no table of days fails both, with its place", () => {
  const source = sourceOf("date,low,high\n2021-03-01,x,9\n");
  for (const answer of [source.yearsBehind(), source.seasonSoFar({ today })])
    expect(answer).toMatchObject({
      ...{ kind: "failed" },
      fault: expect.stringContaining(".csv:2"),
    });
});
