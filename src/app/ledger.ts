export { type Ledger, readLedger, type StoredLedger } from "../views/records.ts";
