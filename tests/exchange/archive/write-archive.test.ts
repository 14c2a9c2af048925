import { describe, expect, it } from "vitest";
import { filesOfUpload } from "@/lib/exchange/archive/files-of-upload";
import { writeArchive } from "@/lib/exchange/archive/write-archive";

const files = new Map([
  ["lots.csv", new TextEncoder().encode("lot,variety\r\nÉlan 1,Élan Crest\r\n")],
  ["photos/1a.jpg", Uint8Array.of(255, 216, 255)],
]);

const written = async (of: typeof files, folder: string, later: Parameters<typeof writeArchive>[1] = []) =>
  new Uint8Array(await new Response(writeArchive(of, later, folder)).arrayBuffer());

describe("a written archive", () => {
  it("unpacks to the same files", async () => {
    const read = await filesOfUpload(new Map([["folder.zip", await written(files, "kinrow-folder")]]));
    expect(read.ok && read.value).toEqual(files);
  });

  it("has the same bytes for the same files", async () => {
    expect(await written(files, "folder")).toEqual(await written(new Map(files), "folder"));
  });

  it("takes files that are read in their turn, one after another, and leaves out what is gone", async () => {
    let open = 0;
    const late = (path: string, bytes: Uint8Array | null) => ({
      path,
      read: async () => {
        expect(open).toBe(0);
        open += 1;
        await Promise.resolve();
        open -= 1;
        return bytes;
      },
    });
    const noise = Uint8Array.from({ length: 300_000 }, (_one, at) => (at * at) % 251);
    const later = [late("photos/2b.jpg", noise), late("photos/3c.jpg", null), late("photos/4d.jpg", noise)];
    const read = await filesOfUpload(new Map([["folder.zip", await written(files, "folder", later)]]));
    expect(read.ok && [...read.value.keys()]).toEqual([...files.keys(), "photos/2b.jpg", "photos/4d.jpg"]);
    expect(read.ok && read.value.get("photos/4d.jpg")).toEqual(noise);
  });
});
