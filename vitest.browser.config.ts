import { defineConfig } from "vitest/config";
import shared from "./vitest.config.ts";

export default defineConfig({
  ...shared,
  test: {
    ...shared.test,
    include: ["tests/browser/**/*.test.ts"],
    exclude: [],
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
