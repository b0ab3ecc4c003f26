import { expect } from "vitest";
import { beginFile } from "./apart.ts";
import { restorePorts } from "./ports.ts";

// Vitest runs this in front of every file of the worker project.
beginFile(expect.getState().testPath ?? "");
restorePorts();
