import fc from "fast-check";
import { DEPTH } from "./depth.ts";

/** Every property draws from the run's seed; in the full depth without one it draws anew each time, and says from what. */
if (DEPTH.seed > 0) fc.configureGlobal({ seed: DEPTH.seed });
