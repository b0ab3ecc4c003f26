import { env } from "cloudflare:workers";

/** All at once: one by one, the migrations would take longer than the tests. */
const queries = env.MIGRATIONS.flatMap((migration) => migration.queries);
await env.DB.batch(queries.map((query) => env.DB.prepare(query)));
