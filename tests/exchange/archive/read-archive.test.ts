import fc from "fast-check";
import { zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { archiveLimits } from "@/lib/exchange/archive/archive-limits";
import { isArchive, readArchive } from "@/lib/exchange/archive/read-archive";

// Packed by another library than the one that unpacks.
const text = (words: string) => new TextEncoder().encode(words);
const zip = (files: Record<string, Uint8Array>) => zipSync(files);

async function refusalOf(bytes: Uint8Array, limits = archiveLimits) {
  const read = await readArchive(bytes, limits);
  return read.ok ? null : read.refusals[0];
}

/** Changes a field of the first entry of the archive's directory. */
function withDirectoryField(bytes: Uint8Array, offset: number, value: number): Uint8Array {
  const changed = Uint8Array.from(bytes);
  const start = changed.findIndex((_, at) =>
    [0x50, 0x4b, 0x01, 0x02].every((byte, step) => changed[at + step] === byte),
  );
  new DataView(changed.buffer).setUint32(start + offset, value, true);
  return changed;
}

describe("an archive", () => {
  it("gives its files by path, without its folders", async () => {
    const read = await readArchive(zip({ "mine/lots.csv": text("lot\r\n"), "mine/photos/a.jpg": Uint8Array.of(1, 2) }));
    expect(read).toMatchObject({ ok: true });
    expect(read.ok && [...read.value]).toEqual([
      ["mine/lots.csv", text("lot\r\n")],
      ["mine/photos/a.jpg", Uint8Array.of(1, 2)],
    ]);
  });

  it("is known by its first bytes", () => {
    expect(isArchive(zip({ a: text("b") }))).toBe(true);
    expect(isArchive(zip({}))).toBe(true);
    expect(isArchive(text("PK,lot"))).toBe(false);
    expect(isArchive(new Uint8Array())).toBe(false);
  });

  it("is refused above the size that may come in", async () => {
    const refusal = await refusalOf(zip({ a: text("words") }), { ...archiveLimits, archiveBytes: 20 });
    expect(refusal?.code).toBe("archive-too-large");
  });

  it("is refused where it promises more than may come out, before any of that is unpacked", async () => {
    const bomb = zip({ "a.csv": text("a"), "b.csv": new Uint8Array(1_000_000) });
    expect(bomb.length).toBeLessThan(2000);
    const refusal = await refusalOf(bomb, { ...archiveLimits, contentBytes: 999_999 });
    expect(refusal).toMatchObject({ code: "archive-too-large", given: "b.csv" });
  });

  it("is refused where a file is larger than it states", async () => {
    const bomb = withDirectoryField(zip({ "b.csv": new Uint8Array(1_000_000) }), 24, 10);
    expect((await refusalOf(bomb))?.code).toBe("archive-damaged");
  });

  it("is refused where it holds more files than it may", async () => {
    const many = Object.fromEntries(Array.from({ length: 4 }, (_, place) => [`${place}.csv`, text("")]));
    expect((await refusalOf(zip(many), { ...archiveLimits, files: 3 }))?.code).toBe("archive-too-large");
  });

  it("is refused where a path leads out of it", async () => {
    for (const path of ["../lots.csv", "a/../../lots.csv", "/lots.csv", "C:/lots.csv"]) {
      expect((await refusalOf(zip({ [path]: text("lot") })))?.code).toBe("archive-damaged");
    }
  });

  it("is refused where a file is locked", async () => {
    // Bit 0 of the flags at offset 8 says so; the compression method (8) follows.
    const locked = withDirectoryField(zip({ "lots.csv": text("lot lot lot lot lot") }), 8, 1 | (8 << 16));
    expect((await refusalOf(locked))?.code).toBe("archive-locked");
  });

  it("is refused where it is cut short", async () => {
    const whole = zip({ "lots.csv": text("lot") });
    expect((await refusalOf(whole.slice(0, whole.length - 30)))?.code).toBe("archive-damaged");
  });

  it("never breaks the reader, whatever bytes it has", async () => {
    const whole = zip({ "a/lots.csv": text("lot,variety\r\n"), "a/b.csv": text("x".repeat(200)) });
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 8 }), async (changes) => {
        const bytes = Uint8Array.from(whole);
        for (const [at, byte] of changes) bytes[at] = byte;
        expect(typeof (await readArchive(bytes, { ...archiveLimits, contentBytes: 1_000_000 })).ok).toBe("boolean");
      }),
      { numRuns: 500 },
    );
  });
});
