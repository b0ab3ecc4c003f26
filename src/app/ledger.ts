export { type Ledger, readLedger, type StoredLedger } from "../views/calendar/ledger.ts";
