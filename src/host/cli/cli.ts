import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { AWAY } from "./away.ts";
import { type Command, type Exit, OPTIONS, type Terminal, WrongUsage } from "./call.ts";
import { CHANGES } from "./changes.ts";
import { CHECK } from "./check.ts";
import { DIARY } from "./diary.ts";
import { FEED } from "./feed.ts";
import { FROST } from "./frost.ts";
import { INVITE } from "./invite.ts";
import { LINKS } from "./links.ts";
import { PICTURE } from "./picture.ts";
import { PUBLISH } from "./publish.ts";
import { RECOVER } from "./recover.ts";
import { RESTORE } from "./restore.ts";
import { ROOM } from "./room.ts";
import { SHEET } from "./sheet.ts";
import { SITE } from "./site.ts";
import { TASKS } from "./tasks.ts";
import { WEATHER } from "./weather.ts";
import { WHY } from "./why.ts";
import { YEAR_COMMAND } from "./year.ts";

const USAGE = `sowbell check PLAN
sowbell tasks PLAN [--json] [--on DAY] [--weather FILE.csv]
sowbell feed PLAN [--for PERSON|household] [--kind sessions|tasks|warnings] [--bed BED]
             [--quiet] [--on DAY] [--ledger FILE] [--weather FILE.csv]
sowbell why PLAN TASK [--on DAY] [--weather FILE.csv]
sowbell away PLAN [--for PERSON] [--on DAY]
sowbell changes PLAN --since DAY [--on DAY]
sowbell diary PLAN [--on DAY]
sowbell frost PLAN --low DEGREES [--json] [--on DAY]
sowbell room PLAN --bed NAME [--json] [--on DAY]
sowbell picture PLAN --of beds|frost|soil|season|weather [--year Y] [--for phone|page] [--on DAY]
             [--weather FILE.csv]
sowbell sheet PLAN [--month 2027-05] [--for PERSON] [--on DAY] [--to FILE]
sowbell year PLAN [--on DAY] [--to FILE]
sowbell links [GARDEN] [--server URL]
sowbell invite [--server URL]
sowbell publish FOLDER [--server URL]
sowbell recover GARDEN [--server URL]
sowbell restore ARCHIVE [--over] [--as GARDEN] [--server URL]
sowbell site STATION.csv [--low COLUMN] [--high COLUMN] [--rain COLUMN] [--date COLUMN]
             [--where COLUMN=VALUE] [--in UNIT] [--latitude DEGREES] > weather.yaml
sowbell site --at LATITUDE,LONGITUDE > weather.yaml
sowbell weather PLAN [--contact ADDRESS] > FILE.csv

PLAN is a year's file or a garden's folder. DAY is a date like 2027-05-08; today is that day.
DEGREES is tonight's low by the forecast, like 29, 29 °F or -2 °C; a bare number is in the plan's measures.
STATION.csv holds a weather station's daily lows and highs; UNIT is °F, °C or tenths.
FILE.csv holds this year's days, date,low,high,rain: measured up to yesterday, forecast from today on.
`;

const COMMANDS: Readonly<Record<string, Command>> = {
  check: CHECK,
  tasks: TASKS,
  feed: FEED,
  why: WHY,
  away: AWAY,
  changes: CHANGES,
  diary: DIARY,
  frost: FROST,
  room: ROOM,
  picture: PICTURE,
  sheet: SHEET,
  year: YEAR_COMMAND,
  links: LINKS,
  invite: INVITE,
  publish: PUBLISH,
  recover: RECOVER,
  restore: RESTORE,
  site: SITE,
  weather: WEATHER,
};

/** Runs one command; `args` are the words behind `sowbell`. Results go out, the rest to err; wrong usage is exit 2. */
export async function run(args: readonly string[], terminal: Terminal): Promise<Exit> {
  try {
    return await dispatch(args, terminal);
  } catch (error) {
    if (!(error instanceof WrongUsage) && !isParsing(error)) throw error;
    terminal.err(`sowbell: ${error.message}\n\n${USAGE}`);
    return 2;
  }
}

/** `--latitude -33` as `--latitude=-33`: node's parser takes a word that begins with a dash for an option. */
function withNumbers(args: readonly string[]): string[] {
  return args.reduce<string[]>((words, arg) => {
    const before = words.at(-1);
    if (before?.startsWith("--") && !before.includes("=") && /^-\d/.test(arg))
      words[words.length - 1] = `${before}=${arg}`;
    else words.push(arg);
    return words;
  }, []);
}

async function dispatch(args: readonly string[], terminal: Terminal): Promise<Exit> {
  const { positionals, values } = parseArgs({
    args: withNumbers(args),
    options: OPTIONS,
    allowPositionals: true,
  });
  if (values.help) {
    terminal.out(USAGE);
    return 0;
  }
  const [name, ...rest] = positionals;
  if (name === undefined) throw new WrongUsage("which command?");
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!command) throw new WrongUsage(`there is no command ${name}`);
  const odd = Object.keys(values).find(
    (option) => !command.takes.some((known) => known === option),
  );
  if (odd) throw new WrongUsage(`${name} takes no --${odd}`);
  return command.run({ rest, options: values, terminal });
}

function isParsing(error: unknown): error is TypeError {
  return (
    error instanceof TypeError && "code" in error && String(error.code).startsWith("ERR_PARSE_ARGS")
  );
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  // Whoever reads may stop early, as `head` does.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });
  process.exitCode = await run(process.argv.slice(2), {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    now: Date.now,
    fetch,
  });
}
