import { defineConfig } from "vitest/config";
import { everywhere } from "./vitest.config.ts";

export default defineConfig({
  ...everywhere,
  test: {
    ...everywhere.test,
    include: ["tests/browser/**/*.test.ts"],
    maxWorkers: 2,
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
