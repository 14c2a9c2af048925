export {
  type Coat,
  type CoatColour,
  type CoatPattern,
  coatColours,
  coatPatterns,
  type SeedShape,
  seedShapes,
} from "./coat";
export { coatFromName } from "./coat-from-name";
export { SeedCoat } from "./seed-coat";
export { shapeOfCrop } from "./shape-of-crop";
