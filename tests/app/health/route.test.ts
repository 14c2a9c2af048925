import { writeFileSync } from "node:fs";
import path from "node:path";
import { beforeEach, expect, test, vi } from "vitest";
import { temporaryFolder } from "@/tests/setup/registry";

let folder: string;

beforeEach(() => {
  folder = temporaryFolder();
  vi.stubEnv("KINROW_DATA", folder);
  vi.resetModules();
});

async function asked(): Promise<Response> {
  const { GET } = await import("@/app/health/route");
  return GET();
}

test("health is told in a few words that name no place and nobody", async () => {
  const response = await asked();
  const text = await response.text();
  const told = JSON.parse(text) as Record<string, unknown>;
  expect(response.headers.get("cache-control")).toBe("no-store");
  expect(text.length).toBeLessThan(1000);
  expect(text).not.toContain(folder);
  expect(Object.keys(told)).toEqual(
    expect.arrayContaining(["status", "release", "lastBackup", "nextBackup", "lastCheck", "freeBytes", "concerns"]),
  );
  // 503 is for a machine whose disk is full; elsewhere it can be worked with.
  expect(response.status).toBe((told.concerns as string[]).includes("space-out") ? 503 : 200);
});

test("a registry that cannot be opened answers 503", async () => {
  writeFileSync(path.join(folder, "registry.sqlite"), "no registry ".repeat(500));
  const response = await asked();
  expect(response.status).toBe(503);
  expect(await response.json()).toEqual({ status: "failing", concerns: ["no-answer"] });
});
