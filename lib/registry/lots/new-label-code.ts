import type { Transaction } from "@/lib/db";
import { LABEL_CODE_BYTES, makeLabelCode } from "@/lib/science/codes/label-code";

/** A label code that no lot and no container has yet. */
export async function newLabelCode(tx: Transaction): Promise<string> {
  for (;;) {
    const code = makeLabelCode(crypto.getRandomValues(new Uint8Array(LABEL_CODE_BYTES)));
    const taken = (await tx.lot.count({ where: { code } })) + (await tx.container.count({ where: { code } }));
    if (taken === 0) return code;
  }
}
