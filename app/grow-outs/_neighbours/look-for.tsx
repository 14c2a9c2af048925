import type { Assessment } from "@/lib/registry/neighbours/assess-neighbours";
import type { NeighboursRead } from "@/lib/registry/neighbours/read-neighbours";

const degrees: Readonly<Record<string, string>> = {
  full: "cross fully",
  partial: "cross in part",
  rare: "hardly cross",
};

/** Wild kin and other kinds that could send pollen, by the crop list: something to look for, nothing that was found. */
export function LookFor({ read: { ground }, assessment: { kin } }: { read: NeighboursRead; assessment: Assessment }) {
  return (
    <div className="stack">
      <p>
        {ground.wildRelatives
          ? `Wild kin by the crop list: ${ground.wildRelatives}.`
          : "The crop list names no wild kin of this crop, which is not to say that there is none."}
      </p>
      {kin.length > 0 ? (
        <ul className="stack-near measure">
          {kin.map((pair) => (
            <li key={`${pair.memberA}:${pair.memberB}`}>
              {pair.memberA} and {pair.memberB} {degrees[pair.degree] ?? pair.degree}
              {pair.evidence ? <span className="quiet"> ({pair.evidence})</span> : null}
            </li>
          ))}
        </ul>
      ) : null}
      <p className="quiet">
        Look too for volunteers of last year, bolters, roots left in the ground, verges, and hives. What you find is a
        neighbour source like any other: choose the crop that it is kin to.
      </p>
    </div>
  );
}
