import type { FieldPack } from "@/lib/schemas/field/field-pack";
import type { FieldRecord } from "@/lib/schemas/field/field-records";
import { scoreWords } from "./score-words";
import { stageNames } from "./seen-words";

/** What a record says, in a few words: "plant 15 marked keep", "Vigour 7 of plant 15". */
export function recordInWords(record: FieldRecord, pack: FieldPack | undefined): string {
  switch (record.kind) {
    case "mark":
      return `plant ${record.body.tag ?? record.body.plant.name} marked ${record.body.intent}`;
    case "score": {
      const { plant, traitId, value, text } = record.body;
      const trait = pack?.traits.find((each) => each.id === traitId);
      return `${trait ? `${trait.name} ${scoreWords(trait, { value, text })}` : "a score"} of plant ${plant.name}`;
    }
    case "walk": {
      const pulled = record.body.pulled.reduce((sum, each) => sum + each.plants, 0);
      return pulled === 0 ? "a rogue pass, found none" : `a rogue pass, ${pulled} pulled`;
    }
    case "count":
      return `a count: ${record.body.plants} ${(stageNames[record.body.stage] ?? record.body.stage).toLowerCase()}`;
    case "flowering":
      return `flowering: ${record.body.organ}, ${record.body.moment}`;
    case "taken":
      return `seed of plant ${record.body.plant.name}: ${record.body.fate}`;
    case "harvest":
      return `a harvest of ${record.body.parts.length} plants`;
    case "photo":
      return record.body.plant === null ? "a photo" : `a photo of plant ${record.body.plant.name}`;
    case "undo":
      return "something taken back";
  }
}
