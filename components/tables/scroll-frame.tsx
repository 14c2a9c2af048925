"use client";

import { type ReactNode, useEffect, useRef, useState } from "react";

/**
 * A frame that is moved sideways where its table is wider than the page. Only then it takes the focus, with its name, so that the arrow
 * keys reach what is hidden; where all is in sight the keyboard passes over it.
 */
export function ScrollFrame({
  label,
  labelledBy,
  className,
  entries,
  children,
}: {
  /** its name where no caption names it */
  label?: string;
  labelledBy?: string;
  className: string | undefined;
  entries?: boolean;
  children: ReactNode;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const [wider, setWider] = useState(false);
  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const look = () => setWider(element.scrollWidth > element.clientWidth);
    const watch = new ResizeObserver(look);
    watch.observe(element);
    for (const child of element.children) watch.observe(child);
    return () => watch.disconnect();
  }, []);
  const reachable = wider ? { tabIndex: 0, role: "region", "aria-label": label, "aria-labelledby": labelledBy } : {};
  return (
    <div ref={frame} className={className} data-entries={entries} {...reachable}>
      {children}
    </div>
  );
}
