/**
 * Views: a year as events, calendars, pages, pictures and paper.
 */

export type { Answer } from "./answers.ts";
export { awayReports } from "./away/report.ts";
export { type AwayText, awayTexts } from "./away/texts.ts";
export { type CalendarInput, writeCalendar } from "./calendar/write.ts";
export { type TaskCard, taskCards } from "./cards.ts";
export { type Change, changesOf } from "./events/changes.ts";
export { type DiaryLineReport, type ObservationReport, reportDiary } from "./events/diary.ts";
export { type FrostTonightText, frostTonightText, nightInShort } from "./events/frost-tonight.ts";
export { isAskedAbout } from "./events/open.ts";
export { type RoomText, roomText } from "./events/room.ts";
export { sayDays, sayPart, sayPieces, voiceOf } from "./events/sentences.ts";
export { seasonText, textOf } from "./events/texts.ts";
export { titleOf } from "./events/titles.ts";
export { monthSheet } from "./paper/month.ts";
export { monthPage } from "./paper/month-page.tsx";
export type { ReviewedYear } from "./paper/planting-history.ts";
export { type YearReport, yearReport } from "./paper/year.ts";
export { yearPage } from "./paper/year-page.tsx";
export { frostNotes, roomNotes } from "./pictures/from-above/notes.ts";
export { drawPicture } from "./pictures/picture.ts";
export type { PictureForm, PictureSubject } from "./pictures/sketch.ts";
export { yearEvents } from "./year-events.ts";
