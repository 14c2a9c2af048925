import { defineConfig } from "prisma/config";

// The address of the database picks the engine: postgresql:// or one file. Migrations are one history an engine.
const url = process.env.KINROW_DATABASE ?? "file:./data/registry.sqlite";
const engine = /^postgres(ql)?:/.test(url) ? "postgresql" : "sqlite";

export default defineConfig({
  schema: engine === "postgresql" ? "prisma/generated/postgresql.prisma" : "prisma/schema.prisma",
  migrations: { path: `prisma/migrations/${engine}` },
  datasource: { url },
});
