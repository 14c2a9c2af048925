import type { ReactNode } from "react";
import { OfRecord } from "../../_session/of-record";

type Props = { params: Promise<{ id: string }>; children: ReactNode };

export default async function TransferLayout({ params, children }: Props) {
  return (
    <OfRecord page="/sharing/[id]" id={(await params).id}>
      {children}
    </OfRecord>
  );
}
