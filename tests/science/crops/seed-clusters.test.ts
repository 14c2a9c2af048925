import { expect, it } from "vitest";
import { cropList } from "@/lib/science/crops/crop-profile";
import { sownInClusters } from "@/lib/science/crops/seed-clusters";

it("beets come up several from one seed ball; no other crop of the list does", () => {
  const keys = cropList().map(({ key }) => key);
  expect(keys.filter(sownInClusters)).toEqual(["beet", "chard", "sugar-beet"]);
});
