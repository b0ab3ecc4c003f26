import { readFileSync, renameSync, writeFileSync } from "node:fs";
import {
  type FeedChoice,
  feedName,
  type Ledger,
  newestPlan,
  type Plan,
  type PublishedState,
  readLedger,
  type StoredLedger,
  writeFeed,
} from "../../app/index.ts";
import {
  buildScheduleOn,
  type Call,
  type Command,
  type Exit,
  findByName,
  load,
  type Options,
  personNamed,
  rejectExtraWords,
  today,
  WrongUsage,
} from "./call.ts";

type LedgerFile = { readonly ledger: Ledger | null; readonly standing: PublishedState };

function readLedgerFile(file: string | undefined): LedgerFile {
  if (file === undefined) return { ledger: null, standing: {} };
  try {
    const { ledger, standing } = JSON.parse(readFileSync(file, "utf8")) as {
      readonly ledger: StoredLedger | null;
      readonly standing: PublishedState;
    };
    return { ledger: ledger && readLedger(ledger), standing };
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT")
      return { ledger: null, standing: {} };
    throw new WrongUsage(
      `--ledger ${file} is not a ledger of ours: ${error instanceof Error ? error.message : error}`,
    );
  }
}

/** Written beside and moved into place, so that a broken run never leaves half a ledger. */
function writeLedgerFile(file: string, ledgerFile: LedgerFile): void {
  writeFileSync(`${file}.new`, JSON.stringify(ledgerFile));
  renameSync(`${file}.new`, file);
}

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { options, terminal } = call;
  const choice = choiceOf(options, loaded.garden.plans);
  const ledgerFile = readLedgerFile(options.ledger);
  const schedule = buildScheduleOn(call, loaded, ledgerFile.standing);
  const { id, plans } = loaded.garden;
  const calendar = writeFeed({
    garden: id,
    name: feedName(plans.toReversed(), choice),
    choice,
    events: schedule.events,
    link: null,
    clock: newestPlan(plans).site.clock,
    cause: today(call, loaded).instant,
    now: today(call, loaded).instant,
    ledger: ledgerFile.ledger,
  });
  terminal.out(calendar.text);
  if (options.ledger !== undefined)
    writeLedgerFile(options.ledger, { ledger: calendar.ledger, standing: schedule.publishedState });
  else
    terminal.err(
      "This file is for a single import: without --ledger a calendar cannot tell later changes.\n",
    );
  return 0;
}

function choiceOf(options: Options, plans: readonly Plan[]): FeedChoice {
  const kinds = ["sessions", "tasks", "warnings"] as const;
  const kind = kinds.find((each) => each === (options.kind ?? "sessions"));
  if (!kind) throw new WrongUsage(`--kind ${options.kind}: sessions, tasks or warnings`);
  const whose = options.for ?? "household";
  const bed =
    options.bed === undefined
      ? null
      : findByName(
          plans.flatMap((plan) => plan.beds),
          options.bed,
        );
  if (bed === undefined) throw new WrongUsage(`--bed ${options.bed}: the plan has no such bed`);
  return {
    of: whose === "household" ? whose : { person: personNamed(whose, plans) },
    kind,
    bed: bed?.key ?? null,
    quiet: options.quiet ?? false,
    reader: false,
  };
}

/** `feed PLAN …`: one calendar on standard output; with a ledger, one that a calendar program can follow. */
export const FEED: Command = {
  takes: ["for", "kind", "bed", "quiet", "on", "ledger", "weather"],
  run,
};
