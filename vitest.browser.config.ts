import { defineConfig } from "vitest/config";
import shared from "./vitest.config.ts";

export default defineConfig({
  ...shared,
  test: {
    ...shared.test,
    include: ["tests/browser/**/*.test.ts"],
    exclude: [],
    fileParallelism: false,
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
