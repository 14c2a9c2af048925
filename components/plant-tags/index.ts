export { PlantTags, type PrintedTag } from "./plant-tags";
export { type TagKind, type TagLayout, tagKinds, tagLayout } from "./tag-layout";
