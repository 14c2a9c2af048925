import kinds from "@/lib/science/germination/kinds-of-crops.json";

/**
 * The kind under which the United States seed regulation lists a crop of the crop list; undefined where it has none.
 * The joining of the two lists is our own.
 */
export function kindOfCrop(cropKey: string): string | undefined {
  return (kinds as Readonly<Record<string, string>>)[cropKey];
}
