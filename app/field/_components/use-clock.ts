import { useEffect, useState } from "react";

/** The phone's clock, looked at every so many milliseconds. */
export function useClock(every: number): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const each = setInterval(() => setNow(Date.now()), every);
    return () => clearInterval(each);
  }, [every]);
  return now;
}
