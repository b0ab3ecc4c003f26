export { type DiaryLineReport, type ObservationReport, reportDiary } from "../views/index.ts";
