import { useEffect, useRef, useState } from "react";
import type { TableAddress } from "./table-address";

const pause = 220;

/**
 * The table's state: what the address says, then what the hand does. `write` puts a change into the address, at once for a
 * press and after a short pause in typing.
 */
export function useTableState(address: TableAddress, write: (next: TableAddress) => void) {
  const [state, setState] = useState(address);
  const [told, setTold] = useState(address);
  const typing = useRef<ReturnType<typeof setTimeout>>(undefined);
  const changed = JSON.stringify(address) !== JSON.stringify(told);
  if (changed) {
    // the page was asked for anew (a link, the way back): the address leads, but never over what is being typed
    setTold(address);
    setState({ ...address, filter: state.filter !== told.filter ? state.filter : address.filter });
  }
  useEffect(() => () => clearTimeout(typing.current), []);
  function change(next: TableAddress, how: "pressed" | "typing" = "pressed") {
    setState(next);
    clearTimeout(typing.current);
    if (how === "pressed") write(next);
    else typing.current = setTimeout(() => write(next), pause);
  }
  return { state, change };
}
