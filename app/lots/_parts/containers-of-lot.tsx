import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { plainNumber } from "@/lib/display/numbers";
import { temperature, type UnitSettings, weight } from "@/lib/display/units";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { ContainerOfLot } from "@/lib/registry/reserve/read-holdings";

/** In what a lot is kept, and where. */
export function ContainersOfLot({ read, units }: { read: LotRead; units: UnitSettings }) {
  const { containers, lot } = read;
  if (containers.length === 0) return <p className="quiet">Nobody wrote down where it stands.</p>;
  return (
    <SimpleTable
      entries
      columns={[
        { key: "container", name: "Container" },
        { key: "place", name: "Stands in" },
        { key: "amount", name: "Holds", kind: "count" },
        { key: "since", name: "" },
      ]}
      rows={containers.map((container) => ({
        id: container.containerId,
        cells: {
          container: (
            <Way href={`/lots/${lot.id}/containers/${container.containerId}`}>
              {container.kind ?? "container"} {container.code}
            </Way>
          ),
          place: placeInWords(container, units),
          amount: amountInWords(container, units),
          since: sinceInWords(container),
        },
      }))}
    />
  );
}

function placeInWords(container: ContainerOfLot, units: UnitSettings): string {
  const { place, placeKind, building, temperatureC, relativeHumidityPercent } = container;
  const parts = [
    place ?? "not said",
    placeKind && placeKind !== place?.toLowerCase() ? placeKind : "",
    building ?? "",
    temperatureC === null ? "" : temperature(temperatureC, units),
    relativeHumidityPercent === null ? "" : `air at ${plainNumber(relativeHumidityPercent)} % humidity`,
  ];
  return parts.filter(Boolean).join(", ");
}

function amountInWords({ amount, unit }: ContainerOfLot, units: UnitSettings): string {
  if (amount === null) return "unknown";
  return unit === "g" ? weight(amount, units) : `${plainNumber(amount)} ${unit}`;
}

function sinceInWords({ sealedOn, lastOpened, desiccant, note }: ContainerOfLot): string {
  const parts = [
    sealedOn ? `sealed ${dateInWords(sealedOn)}` : "",
    lastOpened ? `last opened ${dateInWords(lastOpened)}` : "",
    desiccant ? `with ${desiccant}` : "",
    note ?? "",
  ];
  return parts.filter(Boolean).join("; ");
}
