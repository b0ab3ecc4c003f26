import type { FirstAnswers, FirstBed, FirstCrop } from "../../../src/garden/model/first-answers.ts";

/** A row of the form for a bed, empty but for what is given. */
export const bedRow = (said: Partial<FirstBed>): FirstBed => ({
  ...{ name: "", kind: "bed", length: "", width: "", count: "", holds: "" },
  ...said,
});

/** A row for a crop, carrots in no bed but for what is given. */
export const cropRow = (said: Partial<FirstCrop>): FirstCrop => ({
  ...{ crop: "carrot", bed: null, amount: "", unit: "plants", start: "", since: "" },
  ...said,
});

/** A whole form of somebody who gardens near Oslo. */
export const ANSWERS: FirstAnswers = {
  garden: "Brook: the <b>",
  year: "2027",
  measures: "metric",
  clock: "Europe/Oslo",
  where: "60,1; 10,5",
  lastFrost: "about 20 May",
  firstFrost: "about 20 Sep",
  guessed: false,
  hottest: "22 °C",
  coldest: "-7",
  weather: "",
  forecast: "Open-Meteo",
  people: [
    { name: "Ada", gardens: "Sat 9-12", home: "" },
    { name: "Bo", gardens: "", home: "" },
  ],
  beds: [
    bedRow({ name: "South bed", length: "4", width: "1.2" }),
    bedRow({ name: "Pots", kind: "pots", count: "6", holds: "20" }),
    bedRow({ name: "Glass", kind: "greenhouse", length: "3", width: "2.4" }),
  ],
  crops: [
    cropRow({ amount: "3", unit: "rows", bed: 0 }),
    cropRow({ crop: "tomato", amount: "6", start: "seed indoors", bed: 1 }),
    cropRow({ crop: "leek" }),
  ],
};
