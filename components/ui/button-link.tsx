import type { ReactNode } from "react";
import { type ButtonKind, buttonClass } from "./button";
import { FileWay, Way } from "./offered";

/** A link that looks like a button, for an action that is a page; there only for who may. `download` makes it a file. */
export function ButtonLink({
  kind = "plain",
  wide,
  href,
  download,
  children,
}: {
  kind?: ButtonKind;
  wide?: boolean;
  href: string;
  download?: boolean | string;
  children: ReactNode;
}) {
  if (download !== undefined) {
    return (
      <FileWay href={href} download={download} className={buttonClass(kind, wide)}>
        {children}
      </FileWay>
    );
  }
  return (
    <Way href={href} className={buttonClass(kind, wide)}>
      {children}
    </Way>
  );
}
