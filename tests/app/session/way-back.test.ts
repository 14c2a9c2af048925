import { describe, expect, it } from "vitest";
import { isOurHost } from "@/app/_session/shared";
import { signInAddress, wayBack } from "@/app/_session/way-back";
import { isOpenRoute } from "@/lib/access/open-routes";

describe("the way back after signing in", () => {
  it("leads to a page of ours, and never elsewhere", () => {
    expect(wayBack("/lots?crop=pea")).toBe("/lots?crop=pea");
    expect(wayBack("/lots?_rsc=1x2y")).toBe("/lots");
    for (const bad of [
      "https://other.example/",
      "//other.example/x",
      "/\\other.example",
      "/\t/other.example",
      "/.//other.example",
      "/..//other.example",
      "/lots/..//other.example",
      "/%2e//other.example",
      "lots",
      "",
      null,
    ])
      expect(wayBack(bad)).toBe("/");
    expect(wayBack("/sign-in?then=/sign-in")).toBe("/");
  });

  it("stands in the address of the sign-in page", () => {
    expect(signInAddress("/lots?crop=pea&page=2")).toBe("/sign-in?then=%2Flots%3Fcrop%3Dpea%26page%3D2");
    expect(signInAddress("/")).toBe("/sign-in");
  });
});

describe("the name that a browser asked for", () => {
  it("is this machine's own where nothing else is said", () => {
    for (const ours of ["127.0.0.1:4707", "localhost:4707", "LOCALHOST", "[::1]:4707"])
      expect(isOurHost(ours)).toBe(true);
    for (const not of ["other.example:4707", "127.0.0.1.other.example", "192.0.2.1:4707", "", null])
      expect(isOurHost(not)).toBe(false);
  });
});

describe("what is open without signing in", () => {
  it("is a few places and what lies under them, not what only begins alike", () => {
    for (const open of ["/sign-in", "/come-in/ABC", "/certificate/authority", "/ready"])
      expect(isOpenRoute(open)).toBe(true);
    for (const shut of ["/", "/lots", "/sign-in-not", "/take-out/folder", "/readying"])
      expect(isOpenRoute(shut)).toBe(false);
  });
});
