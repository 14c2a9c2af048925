import { expect, it } from "vitest";
import { growOutsByShortCode } from "@/lib/registry/grow-outs/grow-outs-by-short-code";
import { shortCodeOfId } from "@/lib/science/codes/short-code-of-id";
import { onEveryEngine } from "../../setup/engines";
import { aGrowOut } from "../plants/a-grow-out";

onEveryEngine("a grow-out by the short code of its sheets and tags", (fresh) => {
  it("is found in capitals and in small letters, and where none has it there is none", async () => {
    const db = await fresh();
    const { id } = await aGrowOut(db);
    const code = shortCodeOfId(id);
    expect((await growOutsByShortCode(db, code)).map((each) => each.id)).toEqual([id]);
    expect((await growOutsByShortCode(db, code.toLowerCase())).map((each) => each.id)).toEqual([id]);
    expect(await growOutsByShortCode(db, `${code.slice(0, 4)}${code.endsWith("Z") ? "2" : "Z"}`)).toEqual([]);
  });
});
