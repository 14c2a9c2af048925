// The script, the styles and the faces of the field's document, bundled apart from the desk's: a phone gets what the field needs and nothing of the
// framework. What the document loads at once and what is fetched later stands in files.json beside them.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { build } from "esbuild";

const root = path.resolve(import.meta.dirname, "..");

/** Where the bundle lies; a build of the pages clears the folder around it. */
export const fieldFolder = ".next/field";

/** Makes the bundle anew. Throws with the bundler's own words where a source is wrong. */
export async function bundleField() {
  const outdir = path.join(root, fieldFolder);
  rmSync(outdir, { recursive: true, force: true });
  const entry = "app/field/_components/main.tsx";
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    outdir,
    bundle: true,
    splitting: true,
    format: "esm",
    target: ["es2022", "safari16"],
    minify: true,
    metafile: true,
    entryNames: "field-[hash]",
    chunkNames: "part-[hash]",
    assetNames: "face-[hash]",
    publicPath: "/field/files",
    jsx: "automatic",
    loader: { ".woff2": "file" },
    define: { "process.env.NODE_ENV": '"production"' },
    // the phone's store without the parts for old browsers: its weight counts
    alias: {
      dexie: "./node_modules/dexie/dist/modern/dexie.mjs",
      // what the desk shows, too, has links of the framework
      "next/link": "./app/field/_components/plain-link.tsx",
    },
    logLevel: "silent",
  });
  const strange = Object.keys(metafile.inputs).filter((file) => file.startsWith("node_modules/next/"));
  if (strange.length > 0)
    throw new Error(
      `the field takes in ${strange[0]} of the framework, which cannot run there (what the desk shows, too, must not import it)`,
    );
  const outputs = Object.entries(metafile.outputs);
  const names = (wanted) => outputs.map(([file]) => path.basename(file)).filter(wanted);
  const [first, { imports, cssBundle }] = outputs.find(([, output]) => output.entryPoint === entry);
  const atOnce = imports.filter(({ kind }) => kind === "import-statement").map((each) => path.basename(each.path));
  const files = {
    script: path.basename(first),
    style: path.basename(cssBundle),
    /** parts that the first script takes in before it runs */
    parts: atOnce,
    all: names(() => true),
  };
  mkdirSync(outdir, { recursive: true });
  writeFileSync(path.join(outdir, "files.json"), JSON.stringify(files));
  return { files, outputs: metafile.outputs };
}
