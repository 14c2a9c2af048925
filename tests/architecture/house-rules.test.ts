import { describe, expect, it } from "vitest";
import { apart } from "../../vitest.config";
import { importsOf, projectFiles, textOf } from "./source-files";

const code = projectFiles(/\.(ts|tsx|mjs|css)$/).filter((file) => !file.startsWith("prisma/"));

describe("a source file", () => {
  it("has at most 400 lines", () => {
    expect(code.length).toBeGreaterThan(20);
    const long = code
      .map((file) => [file, textOf(file).split("\n").length - 1] as const)
      .filter(([, lines]) => lines > 400);
    expect(long).toEqual([]);
  });

  it("is never a drawer for anything", () => {
    expect(code.filter((file) => /(^|\/)(utils?|misc|helpers?|common)(\.|\/)/.test(file))).toEqual([]);
  });

  it("has a name in kebab-case", () => {
    // the address in a printed code is in capitals, which take half the room
    const plain = (file: string) => file.replace(/\[[^\]]+\]/g, "").replace(/^app\/S\//, "app/");
    const odd = code.filter(
      (file) => !/^(\.ci|[a-z0-9_.[\]-]+)(\/[a-z0-9_.[\]-]+)*$/i.test(file) || /[A-Z]/.test(plain(file)),
    );
    expect(odd).toEqual([]);
  });
});

describe("a test", () => {
  const tests = projectFiles(/^tests\/.*\.test\.tsx?$/);

  it("is never skipped, singled out or left for later", () => {
    const word = /\b(?:it|test|describe)\.(?:skip|only|todo|fails)\b|\bx(?:it|describe)\(/;
    expect(tests.filter((file) => word.test(textOf(file)))).toEqual([]);
  });

  it("expects something in every file", () => {
    expect(tests.filter((file) => !/\bexpect\(|fc\.assert\(/.test(textOf(file)))).toEqual([]);
  });
});

describe("a test that shares its modules with others", () => {
  it("stands nothing in the place of a module, of the surroundings or of what is global", () => {
    const changing = /\bvi\.(?!fn\b)|process\.env\.\w+ *=[^=]|fake-indexeddb/;
    const sharing = projectFiles(/^tests\/.*\.test\.tsx?$/).filter(
      (file) => !/^tests\/(architecture|browser)\//.test(file) && !apart.some((place) => file.startsWith(place)),
    );
    expect(sharing.length).toBeGreaterThan(200);
    expect(sharing.filter((file) => changing.test(textOf(file)))).toEqual([]);
  });
});

describe("an operation", () => {
  /** What stands between the bracket that opens before `start` and the one that closes it. */
  function within(text: string, start: number): string {
    let open = 1;
    let end = start;
    for (; end < text.length && open > 0; end += 1) {
      if ("([{".includes(text[end] ?? "")) open += 1;
      if (")]}".includes(text[end] ?? "")) open -= 1;
    }
    return text.slice(start, end);
  }

  it("reads by its own transaction: the registry's other connection may be the very one that it holds", () => {
    const beside = projectFiles(/^(lib|seed-scenario|tests)\/.*\.ts$/).filter((file) => {
      const text = textOf(file);
      return [...text.matchAll(/(?:\bperform|\$transaction)(?:<[^(]*>)?\(/g)].some(({ 0: head, index }) => {
        const call = within(text, index + head.length);
        return call.includes("=>") && /\bdb\.(read|write|whole)\b/.test(call.slice(call.indexOf("=>")));
      });
    });
    expect(beside).toEqual([]);
  });
});

describe("a formula", () => {
  const formulas = projectFiles(/^lib\/science\/.*\.ts$/).filter((file) =>
    /export (?:async )?function/.test(textOf(file)),
  );
  const outside = projectFiles(/^(lib|app|components|seed-scenario)\/.*\.tsx?$/).filter(
    (file) => !file.startsWith("lib/science/"),
  );
  const used = new Set(outside.flatMap(importsOf));
  const tested = new Set(projectFiles(/^tests\/science\/.*\.test\.ts$/).flatMap(importsOf));

  it("that the registry or the screens use has a test of its own", () => {
    const open = formulas
      .map((file) => file.replace(/\.ts$/, ""))
      .filter((file) => used.has(file) && !tested.has(file));
    expect(open.filter((file) => !file.endsWith("/outcome"))).toEqual([]);
  });

  it("says in its comment what it answers", () => {
    const silent = formulas.filter((file) => !/\/\*\*[\s\S]*?\*\/\s*(?:export|const|function)/.test(textOf(file)));
    expect(silent).toEqual([]);
  });
});

describe("the project", () => {
  it("carries no path of a machine and no registry host", () => {
    const own = projectFiles(/\.(ts|tsx|mjs|json|md|css|prisma|sql)$/).filter((file) => file !== "package-lock.json");
    const words = ["/wo" + "rk/", "/tm" + "p/", "/ro" + "ot/", "../sha" + "red", "registry.npm" + "js"];
    expect(own.filter((file) => words.some((word) => textOf(file).includes(word)))).toEqual([]);
  });
});
