import { describe, expect, it } from "vitest";
import { hasLight, missingBy, missingInWords } from "@/components/scanner/camera";

// The names are those that getUserMedia refuses with: W3C, Media Capture and Streams, section 10.2.
describe("a camera that is refused", () => {
  it("is told apart by the browser's own name for it", () => {
    const by = (name: string) => missingBy(new DOMException("", name));
    expect(by("NotAllowedError")).toBe("not-allowed");
    expect(by("NotFoundError")).toBe("not-there");
    expect(by("OverconstrainedError")).toBe("not-there");
    expect(by("NotReadableError")).toBe("taken");
    expect(by("DataError")).toBe("failed");
    expect(missingBy("nothing")).toBe("failed");
  });

  it("always leaves typing", () => {
    for (const words of Object.values(missingInWords)) expect(words).toMatch(/type what stands beside/i);
  });
});

describe("the light of a camera", () => {
  const stream = (torch: unknown) =>
    ({ getVideoTracks: () => [{ getCapabilities: () => ({ torch }) }] }) as unknown as MediaStream;

  it("is offered where the camera says that it has one, and nowhere else", () => {
    expect(hasLight(stream(true))).toBe(true);
    expect(hasLight(stream([false, true]))).toBe(true);
    expect(hasLight(stream(false))).toBe(false);
    expect(hasLight(stream([false]))).toBe(false);
    expect(hasLight(stream(undefined))).toBe(false);
    expect(hasLight({ getVideoTracks: () => [{}] } as unknown as MediaStream)).toBe(false);
    expect(hasLight({ getVideoTracks: () => [] } as unknown as MediaStream)).toBe(false);
  });
});
