import Link from "next/link";
import type { ReactNode } from "react";
import { PageHead } from "@/components/frame";
import type { GroundOfNeighbours } from "@/lib/registry/neighbours/read-neighbours";

/** The head of a form about the neighbourhood of a grow-out. */
export function FormHead({
  ground,
  title,
  children,
}: {
  ground: GroundOfNeighbours;
  title: string;
  children?: ReactNode;
}) {
  return (
    <PageHead
      kind={
        <>
          <Link href={`/grow-outs/${ground.id}/neighbours`}>Neighbours</Link> of grow-out{" "}
          <Link href={`/grow-outs/${ground.id}`}>{ground.name}</Link>
        </>
      }
      title={title}
    >
      {children ? <p>{children}</p> : null}
    </PageHead>
  );
}
