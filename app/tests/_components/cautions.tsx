import { Notice } from "@/components/ui";

/** Treated seed, or seed of which nobody knows whether it was: the usual care. Nothing where the seed is known to be untreated. */
export function TreatedCaution({ treatment, substance }: { treatment: string | null; substance: string | null }) {
  if (treatment !== "chemical" && treatment !== "unknown") return null;
  return (
    <Notice
      kind="caution"
      title={
        treatment === "chemical"
          ? `Treated seed${substance ? `: ${substance}` : ""}`
          : "Perhaps treated, nobody knows with what"
      }
    >
      <p>
        Wear gloves, raise no dust, wash your hands. Nothing of the test is eaten, fed or composted; your local rules
        say where it goes.
      </p>
    </Notice>
  );
}

/** Mould in a damp cloth: the usual care. */
export function MouldCaution() {
  return (
    <Notice kind="caution" title="Mouldy seed">
      <p>
        A mouldy seed is a dead seed: count it so. Open the cloth away from your face, do not blow on it or let it dry
        to dust, wear gloves; with asthma let somebody else look. What your local rules say about mouldy seed stands
        above this.
      </p>
    </Notice>
  );
}
