import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

/** What the unit tests and those in a browser have in common. */
export const everywhere = {
  resolve: { alias: { "@": fileURLToPath(new URL(".", import.meta.url)).replace(/\/$/, "") } },
  test: {
    // Long enough for a machine that runs ten times slower than most: a limit finds what hangs, speed is the bench's.
    testTimeout: 300_000,
    hookTimeout: 300_000,
  },
};

/** Folders and files of tests that stand something in the place of a module, of the process's surroundings or of what is global. */
export const apart = [
  "tests/app/",
  "tests/components/long-calculation/",
  "tests/faults/",
  "tests/field/",
  "tests/log/",
  "tests/registry/accounts/sign-in-costs-alike.test.ts",
  "tests/registry/figures/",
  "tests/registry/safe-keeping/health.test.ts",
  "tests/worker/",
];
const alone = apart.map((place) => (place.endsWith("/") ? `${place}**/*.test.{ts,tsx}` : place));

export default defineConfig({
  test: {
    globalSetup: ["tests/setup/whole-run.ts"],
    maxWorkers: 2,
    projects: [
      {
        ...everywhere,
        test: { ...everywhere.test, name: "apart", include: alone, setupFiles: ["tests/setup/each-file.ts"] },
      },
      {
        ...everywhere,
        test: {
          ...everywhere.test,
          name: "together",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: ["tests/browser/**", ...alone],
          setupFiles: ["tests/setup/each-file.ts"],
          // One copy of our modules for all files of a worker: to read them anew for each takes longer than most files do.
          isolate: false,
        },
      },
    ],
  },
});
