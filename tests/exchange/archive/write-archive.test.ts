import { describe, expect, it } from "vitest";
import { filesOfUpload } from "@/lib/exchange/archive/files-of-upload";
import { writeArchive } from "@/lib/exchange/archive/write-archive";

const files = new Map([
  ["lots.csv", new TextEncoder().encode("lot,variety\r\nÉlan 1,Élan Crest\r\n")],
  ["photos/1a.jpg", Uint8Array.of(255, 216, 255)],
]);

describe("a written archive", () => {
  it("unpacks to the same files", async () => {
    const read = await filesOfUpload(new Map([["folder.zip", writeArchive(files, "kinrow-folder")]]));
    expect(read.ok && read.value).toEqual(files);
  });

  it("has the same bytes for the same files", () => {
    expect(writeArchive(files, "folder")).toEqual(writeArchive(new Map(files), "folder"));
  });
});
