export {
  type DiaryLineReport,
  type ObservationReport,
  reportDiary,
} from "../views/events/diary.ts";
