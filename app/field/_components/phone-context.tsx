import { createContext, useContext, useSyncExternalStore } from "react";
import type { Phone, PhoneNow } from "@/lib/field/phone";

const ThisPhone = createContext<Phone | null>(null);

export const PhoneProvider = ThisPhone.Provider;

/** This phone; every screen of the field stands within it. */
export function usePhone(): Phone {
  const phone = useContext(ThisPhone);
  if (phone === null) throw new Error("no phone around this screen");
  return phone;
}

export function usePhoneNow(): PhoneNow {
  const phone = usePhone();
  return useSyncExternalStore(phone.listen, phone.now, phone.now);
}
