import { describe, expect, it } from "vitest";
import { importsOf, projectFiles, textOf } from "./source-files";

/** Who may import whom. `*` in packages: any; otherwise only those that begin so. */
interface Layer {
  readonly may: readonly string[];
  readonly packages?: readonly string[];
}

const layers: Readonly<Record<string, Layer>> = {
  "lib/science": { may: ["lib/science"], packages: ["@stdlib/"] },
  "lib/schemas": { may: ["lib/science", "lib/schemas"], packages: ["zod"] },
  "lib/worker": { may: ["lib/science", "lib/schemas", "lib/worker"], packages: ["node:", "tsx"] },
  "lib/access": { may: ["lib/science", "lib/schemas", "lib/access"], packages: [] },
  "lib/log": { may: ["lib/access", "lib/log"], packages: ["node:", "pino"] },
  "lib/db": { may: ["lib/db", "prisma/generated"] },
  "lib/registry": {
    may: ["lib/science", "lib/schemas", "lib/worker", "lib/access", "lib/db", "lib/registry"],
    packages: ["uuidv7", "node:", "zod", "server-only", "better-auth", "@better-auth/", "sharp"],
  },
  "lib/exchange": { may: ["lib/science", "lib/schemas", "lib/registry", "lib/exchange", "lib/access"] },
  "lib/backups": {
    may: ["lib/science", "lib/schemas", "lib/access", "lib/db", "lib/registry", "lib/exchange", "lib/backups"],
    packages: ["node:"],
  },
  // runs in the phone's browser: no zod there (its weight), so of lib/schemas it takes words, limits and types
  "lib/field": { may: ["lib/science", "lib/schemas", "lib/field"], packages: ["dexie", "uuidv7"] },
  "lib/display": { may: ["lib/science", "lib/schemas", "lib/display"], packages: [] },
  // the layout of the stem chart is measured by the bench
  "lib/cli": { may: ["lib/", "components/stem-chart"] },
  components: {
    may: ["lib/science", "lib/schemas", "lib/display", "components"],
    packages: ["react", "next", "@tanstack/", "recharts", "temml", "jsqr"],
  },
  app: {
    may: [
      "lib/science",
      "lib/schemas",
      "lib/worker",
      "lib/access",
      "lib/registry",
      "lib/exchange",
      "lib/field",
      "lib/display",
      "components",
      "app",
      "seed-scenario",
    ],
  },
  "seed-scenario": {
    may: ["lib/science", "lib/schemas", "lib/access", "lib/db", "lib/registry", "lib/exchange", "seed-scenario"],
  },
};

const sources = projectFiles(/^(lib|components|app|seed-scenario)\/.*\.tsx?$/);

function layerOf(file: string): [string, Layer] {
  const found = Object.entries(layers).find(([folder]) => file.startsWith(`${folder}/`));
  if (!found) throw new Error(`${file} stands in no layer; put it in one of ${Object.keys(layers).join(", ")}`);
  return found;
}

function refusalOf(file: string, to: string): string | null {
  const [name, layer] = layerOf(file);
  if (to.startsWith("package:")) {
    const wanted = to.slice("package:".length);
    return !layer.packages || layer.packages.some((each) => wanted.startsWith(each))
      ? null
      : `${file} (${name}) takes in ${wanted}`;
  }
  return layer.may.some((each) => `${to}/`.startsWith(each.endsWith("/") ? each : `${each}/`))
    ? null
    : `${file} (${name}) reaches into ${to}`;
}

describe("imports", () => {
  it("go only where the layer table allows", () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(sources.flatMap((file) => importsOf(file).flatMap((to) => refusalOf(file, to) ?? []))).toEqual([]);
  });

  it("of the database client stand only in lib/db", () => {
    const outside = sources.filter(
      (file) => !file.startsWith("lib/db/") && importsOf(file).some((to) => to.startsWith("prisma/generated")),
    );
    expect(outside).toEqual([]);
  });

  it("of the app reach lib/db from no page or action", () => {
    expect(
      sources.filter((file) => file.startsWith("app/") && importsOf(file).some((to) => to.startsWith("lib/db"))),
    ).toEqual([]);
  });

  it("are refused where a layer reaches upward", () => {
    expect(refusalOf("lib/science/outcome.ts", "lib/registry/open-registry")).toContain("reaches into");
    expect(refusalOf("lib/science/outcome.ts", "package:zod")).toContain("takes in zod");
    expect(refusalOf("components/jar/jar.tsx", "lib/db/client")).toContain("reaches into");
  });
});

const pure = /\b(Date\.now|new Date\(\)|Math\.random|performance\.now|process\.|fetch\()/;

describe("the science", () => {
  it("has no clock, no chance and no input or output", () => {
    const impure = projectFiles(/^lib\/science\/.*\.ts$/).filter((file) => pure.test(withoutComments(file)));
    expect(impure).toEqual([]);
  });
});

/** A file's code: a word in a comment is not a call. */
function withoutComments(file: string): string {
  return textOf(file)
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/\/\/.*$/gm, "");
}
