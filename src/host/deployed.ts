/**
 * What is deployed: the worker, with `process` out of sight. The page writer of hono/jsx looks behind it for AsyncLocalStorage at
 * the first page, and the platform then loads half of Node for it. Our pages are written in one go and need neither.
 */
Object.defineProperty(globalThis, "process", { value: undefined });

export { default, GardenObject, WeatherCell } from "./worker.ts";
