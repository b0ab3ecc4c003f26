import type { WrittenFeed } from "../../../src/host/store/feeds.ts";
import { SAVED_AT } from "./made.ts";

/** A feed of that text, written by the first build; what is given stands instead. */
export function writtenFeed(text: string, over: Partial<WrittenFeed> = {}): WrittenFeed {
  return {
    ...{ link: "owner-1", feed: "tasks.ics", build: 1, code: "code 1", until: SAVED_AT + 1 },
    ...{ text, print: `print of ${text}`, lastModified: SAVED_AT },
    ...{ ledger: { entries: {} }, over: null },
    ...over,
  };
}
