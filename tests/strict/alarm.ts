import type { Fault } from "./lines.ts";
import { counted, fault, first } from "./rules.ts";
import type { Component } from "./tree.ts";
import { type Moment, secondsOf, textFault } from "./values.ts";

const SECONDS_PER_DAY = 86_400;
const RULE = { once: ["ACTION", "TRIGGER"], maybe: ["DESCRIPTION"], refused: {} } as const;

/**
 * Faults of an event's alarm. None or one; shown, described, before the start, and never at midnight:
 * Outlook keeps one alarm only and reads its duration without the sign, Thunderbird rings for DISPLAY alone.
 * Source: RFC 5545, sections 3.6.6 and 3.8.6.3.
 */
export function alarmFaults(event: Component, start: Moment | null): readonly Fault[] {
  const [alarm, second] = event.parts;
  if (alarm === undefined) return [];
  if (second !== undefined) return [fault("alarm-twice", second)];
  if (alarm.name !== "VALARM") return [fault("not-an-alarm", alarm)];
  return [...counted(alarm, RULE), ...actionFaults(alarm), ...triggerFaults(alarm, start)];
}

function actionFaults(alarm: Component): readonly Fault[] {
  const [action, text] = [first(alarm, "ACTION"), first(alarm, "DESCRIPTION")];
  if (action && action.value !== "DISPLAY") return [fault("alarm-not-shown", action)];
  if (text === null) return [fault("alarm-without-description", alarm)];
  const code = textFault(text.value);
  return code === null ? [] : [fault(code, text)];
}

function triggerFaults(alarm: Component, start: Moment | null): readonly Fault[] {
  const trigger = first(alarm, "TRIGGER");
  if (trigger === null) return [];
  if (trigger.params.RELATED === "END") return [fault("alarm-from-end", trigger)];
  if (trigger.params.VALUE === "DATE-TIME") return [fault("alarm-absolute", trigger)];
  const seconds = secondsOf(trigger.value);
  if (seconds === null) return [fault("alarm-not-a-duration", trigger)];
  const midnight = start?.kind === "date" && seconds % SECONDS_PER_DAY === 0;
  if (midnight) return [fault("alarm-at-midnight", trigger)];
  return seconds < 0 ? [] : [fault("alarm-not-before", trigger)];
}

/** Seconds before the start at which an event's alarm rings; null for none. */
export function ringsBefore(event: Component): number | null {
  const trigger = event.parts[0] && first(event.parts[0], "TRIGGER");
  const seconds = trigger ? secondsOf(trigger.value) : null;
  return seconds === null ? null : -seconds;
}
