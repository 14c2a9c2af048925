import { Select } from "@/components/ui";
import type { FieldOf } from "../../lots/_form/lot-form";

/** A steward of the registry, by name. */
export interface Person {
  readonly id: string;
  readonly name: string;
}

/** Who counted, walked or looked. */
export function Who({ field, people, label }: { field: FieldOf; people: readonly Person[]; label: string }) {
  return (
    <Select
      {...field("by")}
      label={label}
      options={people.map(({ id, name }) => ({ value: id, words: name }))}
      empty="not written"
    />
  );
}

/** The people of a registry in the order of their names. */
export function peopleByName(people: ReadonlyMap<string, string>): Person[] {
  return [...people]
    .map(([id, name]) => ({ id, name }))
    .sort((one, other) => (one.name < other.name ? -1 : one.name > other.name ? 1 : 0));
}
