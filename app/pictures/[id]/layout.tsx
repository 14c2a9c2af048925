import type { ReactNode } from "react";
import { OfRecord } from "../../_session/of-record";

type Props = { params: Promise<{ id: string }>; children: ReactNode };

export default async function PictureLayout({ params, children }: Props) {
  return (
    <OfRecord page="/pictures/[id]" id={(await params).id}>
      {children}
    </OfRecord>
  );
}
