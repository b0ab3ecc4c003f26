import { isGone } from "./leaving.ts";
import { isRevoked } from "./links.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/** Whether an invitation still makes its garden: there is none yet, none was deleted, and the invitation was not revoked. */
export function isInvited(sql: SqlStore, link: string): boolean {
  return firstRow(sql, "SELECT 1 FROM garden") === null && !isGone(sql) && !isRevoked(sql, link);
}
