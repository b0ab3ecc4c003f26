import { type FirstForm, readForm } from "../../../src/host/web/first-form.ts";

/** What somebody near Oslo typed, by the names of the form's fields. */
export const TYPED: Readonly<Record<string, string>> = {
  garden: "Brook <End>",
  year: "2027",
  measures: "metric",
  clock: "Europe/Oslo",
  way: "dates",
  half: "north",
  town: "",
  where: "60.1, 10.5",
  lastFrost: "about 20 May",
  firstFrost: "about 20 Sep",
  hottest: "22 °C",
  coldest: "",
  forecast: "",
  "people.0.name": "Ada",
  "people.0.gardens": "Sat 9-12",
  "people.0.home": "",
  "people.1.name": "Bo",
  "people.1.gardens": "",
  "people.1.home": "",
  "beds.0.name": "South bed",
  "beds.0.kind": "bed",
  "beds.0.length": "4",
  "beds.0.width": "1.2",
  "beds.0.count": "",
  "beds.0.holds": "",
  "beds.1.name": "Pots",
  "beds.1.kind": "pots",
  "beds.1.length": "",
  "beds.1.width": "",
  "beds.1.count": "6",
  "beds.1.holds": "20",
  "crops.0.crop": "carrot",
  "crops.0.bed": "0",
  "crops.0.amount": "3",
  "crops.0.unit": "rows",
  "crops.0.start": "",
  "crops.0.since": "",
  "crops.1.crop": "tomato",
  "crops.1.bed": "1",
  "crops.1.amount": "6",
  "crops.1.unit": "plants",
  "crops.1.start": "plants",
  "crops.1.since": "",
};

/** The same with other answers, as it is sent. */
export function typed(over: Readonly<Record<string, string>> = {}): URLSearchParams {
  return new URLSearchParams({ ...TYPED, ...over });
}

/** The same, read. */
export function formWith(over: Readonly<Record<string, string>> = {}): FirstForm {
  const form = readForm(typed(over));
  if (form === null) throw new Error("that is no form");
  return form;
}
