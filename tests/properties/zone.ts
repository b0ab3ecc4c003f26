import { createHash } from "node:crypto";
import { bytesOf, dawn } from "./feeds.ts";

/** The plan that a process of another time zone is given. */
export const LIVED: string = process.env.LIVED ?? "";

/** The print of every feed of a text, made in this process's own time zone. */
export function print(text: string): string {
  return createHash("sha256")
    .update(bytesOf(text, dawn("2027-05-27")))
    .digest("hex");
}
