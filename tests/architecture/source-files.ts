import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";

/** The project's own files of some kinds: what git tracks or would track. */
export function projectFiles(pattern: RegExp): string[] {
  const listed = execFileSync("git", ["ls-files", "--cached", "--others", "--exclude-standard"], { encoding: "utf8" });
  return [...new Set(listed.split("\n"))].filter((file) => pattern.test(file) && existsSync(file)).sort();
}

export function textOf(file: string): string {
  return readFileSync(file, "utf8");
}

/** Where the imports of a source file lead: project paths without ending, or package names. */
export function importsOf(file: string): string[] {
  const found = textOf(file).matchAll(
    /(?:^|\n)\s*(?:import|export)\s+(?:[^"';]*?\sfrom\s+)?["']([^"']+)["']|import\(\s*["']([^"']+)["']\s*\)/g,
  );
  return [...found].map((match) => resolved(file, match[1] ?? match[2] ?? ""));
}

function resolved(file: string, to: string): string {
  if (to.startsWith("@/")) return to.slice(2);
  if (to.startsWith(".")) return path.posix.normalize(path.posix.join(path.posix.dirname(file), to));
  return `package:${to}`;
}
