import { expect, test } from "vitest";
import { isOpenRoute } from "@/lib/access/open-routes";
import { permissions } from "@/lib/access/permissions";
import { actionOfPath, routes } from "@/lib/access/routes";
import { serverActions } from "@/lib/access/server-actions";
import { importsOf, projectFiles, textOf } from "./source-files";

const routeFiles = projectFiles(/^app\/.*(page\.tsx|route\.ts)$/).filter((file) =>
  /\/(page\.tsx|route\.ts)$/.test(file),
);
const actionFiles = projectFiles(/^app\/.*\.tsx?$/).filter((file) => /^["']use server["']/.test(textOf(file)));

const addressOf = (file: string) => file.replace(/^app|\/(page\.tsx|route\.ts)$/g, "") || "/";

/** The permissions that a text asks for: current("record") by name, current() to read. */
const askedIn = (text: string) =>
  [...text.matchAll(/\bcurrent\((?:"([\w-]+)")?\)/g)].map((found) => found[1] ?? "read");

/** What asks by itself, in another way: who may come in, and how one comes in. */
const asksItself = /\b(atHome|signedIn|signedInOrAsked|isShared|may)\(/;

test("every page and answer is in the list of addresses, and every address of the list is there", () => {
  expect(Object.keys(routes).sort()).toEqual([...new Set(routeFiles.map(addressOf))].sort());
});

test("every page and answer asks for the permission that the list names", () => {
  for (const file of routeFiles) {
    const action = routes[addressOf(file) as keyof typeof routes];
    if (action === "come-in") continue;
    const near = importsOf(file).filter((to) => to.startsWith("app/") && to.endsWith("/read"));
    const text = [file, ...near.map((to) => `${to}.ts`)].map(textOf).join("\n");
    const asked = askedIn(text);
    if (asked.length === 0) expect(asksItself.test(text), `${file} asks for nothing`).toBe(true);
    else expect(asked, file).toContain(action);
  }
});

test("what may be asked for before signing in is this, and nothing else", () => {
  const open = Object.entries(routes).flatMap(([route, action]) => (action === "come-in" ? [route] : []));
  expect(open.sort()).toEqual([
    ...["/api/auth/[...step]", "/certificate", "/certificate/authority", "/come-in", "/come-in/[code]"],
    ...["/field", "/field/files/[name]", "/field/icon/[size]", "/health", "/ready", "/sign-in", "/sw.js"],
  ]);
  for (const route of open) expect(isOpenRoute(route), route).toBe(true);
  for (const route of ["/", "/lots", "/members", "/take-out/folder", "/history", "/search/quick"])
    expect(isOpenRoute(route), route).toBe(false);
});

test("every form is in the list of forms and asks for the permission that it names", () => {
  expect(Object.keys(serverActions).sort()).toEqual(actionFiles);
  for (const file of actionFiles) {
    const parts = textOf(file)
      .split(/(?=export async function )/)
      .slice(1);
    const named = parts.map((part) => /^export async function (\w+)/.exec(part)?.[1] ?? "");
    expect(Object.keys(serverActions[file] ?? {}).sort(), file).toEqual([...named].sort());
    parts.forEach((part, place) => {
      const action = serverActions[file]?.[named[place] ?? ""];
      const asked = askedIn(part);
      if (asked.length > 0) expect([...new Set(asked)], `${file} ${named[place]}`).toEqual([action]);
      else
        expect(action === "come-in" || /\batHome\(/.test(part), `${file} ${named[place]} asks for nothing`).toBe(true);
    });
  }
});

test("no form stands inside another file, where this list would not find it", () => {
  const inside = projectFiles(/^(app|components)\/.*\.tsx?$/).filter((file) =>
    /\n\s+["']use server["']/.test(textOf(file)),
  );
  expect(inside).toEqual([]);
});

test("an address is known by its fixed steps before its changing ones", () => {
  expect(actionOfPath("/lots/new")).toBe("desk");
  expect(actionOfPath("/lots/abc?x=1")).toBe("read");
  expect(actionOfPath("/lots/abc/status")).toBe("decide");
  expect(actionOfPath("/nowhere/at/all")).toBeNull();
});

test("each role may no more than the owner, and a stranger only come in", () => {
  for (const [action, roles] of Object.entries(permissions)) {
    expect(roles, action).toContain("owner");
    if (roles.includes("public")) expect(action).toBe("come-in");
    if (roles.includes("reader")) expect(["read", "come-in"]).toContain(action);
  }
});
