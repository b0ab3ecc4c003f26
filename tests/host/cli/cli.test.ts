import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const garden = () => folderOf({ "2027.yaml": PLAN });
const wrong = () => folderOf({ "2027.yaml": PLAN.replace("beet: 2 rows", "beet: 2 rose") });
const doubtful = () => folderOf({ "2027.yaml": PLAN.replace("beet: 2 rows", "beet: 40 rows") });

describe("exit 0, results on standard output", () => {
  test("for each command that reads a sound plan", async () => {
    const folder = garden();
    const task = "2027/beet/sow-outdoors/1";
    for (const args of [
      ["check", folder],
      ["tasks", folder],
      ["tasks", folder, "--json"],
      ["why", folder, task],
    ]) {
      const { exit, out, err } = await sowbell(args);
      expect([exit, err], args[0]).toEqual([0, ""]);
      expect(out.length, args[0]).toBeGreaterThan(20);
    }
  });

  test("for a year's file as for its folder", async () => {
    const folder = garden();
    const [whole, file] = [
      await sowbell(["tasks", folder]),
      await sowbell(["tasks", join(folder, "2027.yaml")]),
    ];
    expect(file).toEqual(whole);
  });

  test("for a plan with doubts, which are told on standard error", async () => {
    const { exit, out, err } = await sowbell(["check", doubtful()]);
    expect(exit).toBe(0);
    expect(out).toMatch(/no problem/);
    expect(err).toMatch(/2027\.yaml:\d+:\d+: .+\. .+\.\n$/);
  });

  test("for --help, with every command in it", async () => {
    const { exit, out, err } = await sowbell(["--help"]);
    expect([exit, err]).toEqual([0, ""]);
    for (const command of [
      "check",
      "tasks",
      "feed",
      "why",
      "away",
      "picture",
      "links",
      "publish",
      "site",
    ])
      expect(out).toContain(`sowbell ${command}`);
  });
});

describe("exit 1, nothing on standard output", () => {
  test("for a plan with a problem, told with file, line and column", async () => {
    for (const command of ["check", "tasks", "feed"]) {
      const { exit, out, err } = await sowbell([command, wrong()]);
      expect([exit, out], command).toEqual([1, ""]);
      expect(err, command).toMatch(/2027\.yaml:16:\d+: /);
    }
  });

  test("for a plan that is not there", async () => {
    const { exit, out, err } = await sowbell(["check", join(garden(), "2031.yaml")]);
    expect([exit, out]).toEqual([1, ""]);
    expect(err).toMatch(/no such file/);
  });

  test("for a task that is not there", async () => {
    const { exit, out, err } = await sowbell(["why", garden(), "2027/beet/dance/1"]);
    expect([exit, out]).toEqual([1, ""]);
    expect(err).toMatch(/no task 2027\/beet\/dance\/1/);
  });
});

describe("exit 2, usage on standard error", () => {
  const usage = async (...args: readonly string[]) => {
    const { exit, out, err } = await sowbell(args);
    expect([exit, out], args.join(" ")).toEqual([2, ""]);
    expect(err, args.join(" ")).toContain("sowbell check PLAN");
    return err;
  };

  test("without a command", async () => {
    expect(await usage()).toMatch(/^sowbell: which command\?/);
  });

  test("for a command that is none, one of every object's own too", async () => {
    expect(await usage("chekc")).toMatch(/there is no command chekc/);
    await usage("toString");
  });

  test("for an option no command has", async () => {
    await usage("check", garden(), "--loud");
  });

  test("for an option that is another command's", async () => {
    expect(await usage("check", garden(), "--json")).toMatch(/check takes no --json/);
    expect(await usage("tasks", garden(), "--ledger", "kept.json")).toMatch(/takes no --ledger/);
  });

  test("for an option without its value", async () => {
    await usage("tasks", garden(), "--on");
  });

  test("for no plan, and for more than one", async () => {
    expect(await usage("check")).toMatch(/which plan\?/);
    await usage("check", garden(), garden());
  });

  test("for a day the calendar does not have", async () => {
    expect(await usage("tasks", garden(), "--on", "2027-02-30")).toMatch(/2027-02-30/);
  });
});
