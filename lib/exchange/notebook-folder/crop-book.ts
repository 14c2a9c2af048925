import { foldName } from "@/lib/registry/names/fold-name";
import { type CropProfile, cropList, emptyProfile } from "@/lib/science/crops/crop-profile";
import { cropsByWord } from "@/lib/science/crops/crops-by-word";
import { NearNames } from "./near-miss";

const listed: ReadonlySet<string> = new Set(cropList().map(({ key }) => key));

/** The crops that a variety may name: those of the list or registry, and those that a folder adds. */
export class CropBook {
  readonly #profiles = new Map<string, CropProfile>();
  readonly #names: string[] = [];
  #near: NearNames | null = null;

  constructor(crops: readonly CropProfile[]) {
    for (const crop of crops) {
      for (const name of [crop.key, crop.commonName]) {
        this.#profiles.set(foldName(name), crop);
        this.#names.push(name);
      }
    }
  }

  /** By key or common name, in any letter case. */
  find(name: string): CropProfile | undefined {
    return this.#profiles.get(foldName(name));
  }

  /** A crop of the steward's own, of which nothing is known yet; the same one for the same name. */
  add(name: string): CropProfile {
    const profile = this.find(name) ?? emptyProfile(name);
    this.#profiles.set(foldName(name), profile);
    return profile;
  }

  /** As a file names it: a crop of the list by its key, one of the steward's own by its name. */
  nameOf(profile: CropProfile): string {
    return listed.has(profile.key) ? profile.key : profile.commonName;
  }

  /** The keys or names that may be meant: the one that differs by a slip, else those that are so called in everyday words. */
  suggestions(name: string): readonly string[] {
    this.#near ??= new NearNames(this.#names);
    const slip = this.#near.nearest(name);
    if (slip !== null) return [slip];
    return cropsByWord(name, cropList()).map((crop) => crop.key);
  }
}
