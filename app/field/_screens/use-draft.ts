import { useState } from "react";
import { usePhone, usePhoneNow } from "../_components/phone-context";

/**
 * What is begun on a screen and is no record yet: kept on the phone at each tap, so that a call, a reload or a dead battery costs nothing. `clear`
 * when it has become a record.
 */
export function useDraft<T extends object>(screen: string, empty: T): [T, (part: Partial<T>) => void, () => void] {
  const phone = usePhone();
  const begun = usePhoneNow().drafts[screen];
  const [draft, setDraft] = useState<T>(() => ({ ...empty, ...readDraft(begun) }));
  const set = (part: Partial<T>) => {
    const next = { ...draft, ...part };
    setDraft(next);
    void phone.setDraft(screen, JSON.stringify(next));
  };
  const clear = () => {
    setDraft(empty);
    void phone.setDraft(screen, null);
  };
  return [draft, set, clear];
}

function readDraft(text: string | undefined): object {
  try {
    const read: unknown = JSON.parse(text ?? "{}");
    return typeof read === "object" && read !== null ? read : {};
  } catch {
    return {};
  }
}
