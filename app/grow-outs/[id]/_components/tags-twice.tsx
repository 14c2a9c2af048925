import { Notice } from "@/components/ui";
import { counted, listed } from "@/lib/display/plurals";
import type { TagTwice } from "@/lib/registry/plants/tags-twice";

/** Plants that have one tag: asked, never renamed. */
export function TagsTwice({ growOutId, twice }: { growOutId: string; twice: readonly TagTwice[] }) {
  if (twice.length === 0) return null;
  return (
    <Notice kind="waiting" title="Which plant is which?">
      <ul>
        {twice.slice(0, 6).map(({ tag, plants }) => (
          <li key={tag}>
            {counted(plants.length, "plant")} have the tag {tag}
            {plants.some((plant) => plant.cell)
              ? `: in ${listed(plants.map((plant) => plant.cell ?? "a cell not written"))}`
              : ""}
            .
          </li>
        ))}
      </ul>
      <p>
        {twice.length > 6 ? `${twice.length - 6} more tags stand twice. ` : ""}
        Both stay until somebody has looked; another tag can then be{" "}
        <a href={`/grow-outs/${growOutId}/plants`}>written in the grid</a>.
      </p>
    </Notice>
  );
}
