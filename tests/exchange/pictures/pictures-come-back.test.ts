import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { Readable } from "node:stream";
import sharp from "sharp";
import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { checkFolder, importFolder } from "@/lib/exchange/bring-in/import-folder";
import { picturesIn } from "@/lib/exchange/pictures/pictures-of-folder";
import { exportFolder } from "@/lib/exchange/take-out/export-folder";
import { picturesOut } from "@/lib/exchange/take-out/pictures-out";
import { addPhotos } from "@/lib/registry/photos/add-photos";
import { receiveChosen } from "@/lib/registry/photos/arriving";
import { pathOfPhoto } from "@/lib/registry/photos/photo-place";
import { readPhotosOf } from "@/lib/registry/photos/read-photos";
import { halves, withPlace } from "@/tests/registry/photos/pictures";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted, temporaryFolder } from "@/tests/setup/registry";

const owner = ownerHere();
const bytesOf = (text: string) => new TextEncoder().encode(text);
const base = new Map([
  ["varieties.csv", bytesOf("variety,crop\nGrey Morrow,oat\n")],
  ["lots.csv", bytesOf("lot,variety,kind\nM 1,Grey Morrow,founder\n")],
]);

/** Everything that goes out, pictures with it. */
async function wholeFolder(db: Database): Promise<Map<string, Uint8Array>> {
  const files = new Map(await exportFolder(db));
  for (const { path: inside, read } of (await picturesOut(db)).pictures) {
    const bytes = await read();
    if (bytes) files.set(inside, bytes);
  }
  return files;
}

async function withPicture(db: Database): Promise<{ hash: string; lotId: string }> {
  granted(await importFolder(db, owner, base));
  const lot = await db.read.lot.findFirstOrThrow();
  const stored = granted(await receiveChosen(db, "a.jpg", Readable.from([Buffer.from(await withPlace())])));
  granted(await addPhotos(db, owner, { kind: "lot", id: lot.id }, { caption: "The jar", takenOn: "1987~" }, [stored]));
  return { hash: stored.hash, lotId: lot.id };
}

onEveryEngine("Pictures in a folder", (fresh) => {
  it("go out and come back, byte for byte, and again say nothing new", async () => {
    const first = await fresh();
    const { hash } = await withPicture(first);
    const out = await wholeFolder(first);
    expect(new TextDecoder().decode(out.get("photos.csv"))).toContain(`photos/${pathOfPhoto(hash)}`);
    const second = await fresh();
    granted(await importFolder(second, owner, out));
    expect([...(await wholeFolder(second))]).toEqual([...out]);
    const lot = await second.read.lot.findFirstOrThrow();
    expect(await readPhotosOf(second, { kind: "lot", id: lot.id })).toMatchObject([
      { hash, caption: "The jar", there: true },
    ]);
    expect(granted(await importFolder(second, owner, out)).value.nothingNew).toBe(true);
  });

  it("of one's own are made into what is stored, under any name, and checking writes nothing", async () => {
    const db = await fresh();
    const files = new Map([
      ...base,
      [
        "photos.csv",
        bytesOf("file,lot,caption\nold/jar.png,M 1,The jar\nold/jar.png,,\nold/away.png,M 1,\nold/not.jpg,M 1,\n"),
      ],
      ["old/jar.png", Uint8Array.from(await halves(2000, 500).png().toBuffer())],
      ["old/not.jpg", bytesOf("<svg/>")],
    ] as [string, Uint8Array][]);
    const { faults } = await checkFolder(db, files);
    expect(faults.map(({ line, column, code }) => [line, column, code])).toEqual([
      [3, "variety", "of-nothing"],
      [4, "file", "picture-missing"],
      [5, "file", "photo-kind"],
    ]);
    expect(existsSync(path.join(db.location.folder, "photos"))).toBe(false);
    const right = new Map(files).set("photos.csv", bytesOf("file,lot,caption\nold/jar.png,M 1,The jar\n"));
    granted(await importFolder(db, owner, right));
    const photo = await db.read.photo.findFirstOrThrow();
    expect([photo.width, photo.height]).toEqual([1600, 400]);
    expect(existsSync(path.join(db.location.folder, "photos", pathOfPhoto(photo.hash)))).toBe(true);
  });

  it("whose file did not come stand with a warning, and the file may follow", async () => {
    const first = await fresh();
    const { hash } = await withPicture(first);
    const out = await wholeFolder(first);
    const second = await fresh();
    const rows = new Map([...out].filter(([file]) => !file.startsWith("photos/")));
    expect((await checkFolder(second, rows)).warnings.map((each) => each.code)).toContain("picture-missing");
    granted(await importFolder(second, owner, rows));
    expect(await second.read.photo.count()).toBe(1);
    granted(await importFolder(second, owner, out));
    expect(existsSync(path.join(second.location.folder, "photos", pathOfPhoto(hash)))).toBe(true);
    expect(await second.read.photo.count()).toBe(1);
  });
});

it("are found in a folder, beside it as in a backup, and nowhere else", async () => {
  const top = temporaryFolder();
  const folder = path.join(top, "backup", "plain-files");
  mkdirSync(path.join(top, "backup", "photos", "ab"), { recursive: true });
  mkdirSync(folder);
  writeFileSync(path.join(top, "backup", "photos", "ab", "x.jpg"), "beside");
  writeFileSync(path.join(folder, "y.jpg"), "inside");
  writeFileSync(path.join(top, "secret"), "secret");
  const read = async (file: string) => {
    const bytes = await picturesIn(folder)(file);
    return bytes && new TextDecoder().decode(bytes);
  };
  expect([await read("photos/ab/x.jpg"), await read("y.jpg")]).toEqual(["beside", "inside"]);
  for (const file of ["../../secret", "photos/../../../secret", path.join(top, "secret"), "none"])
    expect(await read(file), file).toBeNull();
});

it("with anything hidden in them are made anew: a place, words, a second file behind the end", async () => {
  const db = await (await import("@/tests/setup/registry")).emptyRegistry();
  const plain = await sharp(await withPlace())
    .jpeg()
    .toBuffer();
  const behind = Uint8Array.from(Buffer.concat([Uint8Array.from(plain), bytesOf("<script>51.5 N</script>")]));
  const files = new Map([
    ...base,
    ["photos.csv", bytesOf("file,lot\nb.jpg,M 1\nc.jpg,M 1\n")],
    ["b.jpg", await withPlace()],
    ["c.jpg", behind],
  ] as [string, Uint8Array][]);
  granted(await importFolder(db, owner, files));
  for (const { hash } of await db.read.photo.findMany()) {
    const stored = Uint8Array.from(readFileSync(path.join(db.location.folder, "photos", pathOfPhoto(hash))));
    expect(createHash("sha256").update(stored).digest("hex")).toBe(hash);
    expect(Buffer.from(stored).toString("latin1")).not.toMatch(/Exif|house|script/);
  }
});
