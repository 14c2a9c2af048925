import { expect, test, vi } from "vitest";
import { setOwner } from "@/lib/registry/accounts/set-owner";
import { ownRegistry } from "@/lib/registry/open-registry";
import { granted, temporaryFolder } from "@/tests/setup/registry";

test("a registry that is to be opened to others says that nobody can sign in yet, until an owner can", async () => {
  vi.stubEnv("KINROW_DATA", temporaryFolder());
  const { GET } = await import("@/app/ready/route");
  const said = async () => (await GET()).text();
  vi.stubEnv("KINROW_SHARED", "no");
  expect(await said()).toBe("ready");
  vi.stubEnv("KINROW_SHARED", "yes");
  expect(await said()).toBe("no owner");
  granted(await setOwner(await ownRegistry(), { signInName: "odalind", passphrase: "blue kettle under nine stones" }));
  expect(await said()).toBe("ready");
});
