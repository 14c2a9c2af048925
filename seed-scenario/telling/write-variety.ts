import { writeStories } from "../circle/stories";
import type { Book } from "./book";
import type { VarietyTold } from "./variety-history";

/** Writes what a variety is, apart from its history. */
export function writeVariety(book: Book, told: VarietyTold): void {
  const variety = told.name;
  book.write("varieties.csv", { variety, crop: told.crop, story: told.story, type_description: told.type });
  const [pattern, ground, second] = told.seedCoat;
  book.write("variety_details.csv", {
    variety,
    aim: told.aim ?? "true-to-type",
    seed_coat: JSON.stringify({ pattern, ground, second }),
    cautions: told.cautions,
    sensitivity: told.sensitivity ?? "circle",
    plants_wanted: told.plantsWanted,
    seed_parents_wanted: told.seedParentsWanted,
    isolation_wanted_m: told.isolationWanted,
    note: told.note,
  });
  for (const [name, kind, source] of told.otherNames ?? [])
    book.write("other_names.csv", { variety, name, kind, source });
  for (const [trait, allowed, offType, part] of told.traits)
    book.write("type_traits.csv", { variety, trait, allowed, off_type: offType, part });
  writeStories(book, variety, told.word);
}
