import type { readContainer } from "@/lib/registry/containers/read-container";

/** What stands in the fields in which a container is told of. */
export function fieldsOfContainer(
  container: NonNullable<Awaited<ReturnType<typeof readContainer>>>,
): Record<string, string> {
  const { place } = container;
  return {
    code: container.code,
    kind: container.kind ?? "",
    amount: container.amount === null ? "" : String(container.amount),
    unit: container.unit,
    place: place?.name ?? "",
    placeKind: place?.kind ?? "",
    building: place?.building ?? "",
    sealedOn: container.sealedOn ?? "",
    lastOpened: container.lastOpened ?? "",
    desiccant: container.desiccant ?? "",
    note: container.note ?? "",
  };
}
