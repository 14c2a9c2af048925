import type { ButtonHTMLAttributes, ReactNode } from "react";
import styles from "./button.module.css";
import { FileWay, Way } from "./offered";

/** chief: the one thing to do here; plain: another; waiting: what waits for a hand; quiet: words only. */
export type ButtonKind = "chief" | "plain" | "waiting" | "quiet";

function classOf(kind: ButtonKind, wide: boolean | undefined): string {
  return [styles.button, styles[kind], wide ? styles.wide : ""].filter(Boolean).join(" ");
}

/** A button; `type` is "button" unless said. `wide` fills the line, for a thumb. */
export function Button({
  kind = "plain",
  wide,
  type = "button",
  ...rest
}: { kind?: ButtonKind; wide?: boolean } & Omit<ButtonHTMLAttributes<HTMLButtonElement>, "className">) {
  return <button {...rest} type={type} className={classOf(kind, wide)} />;
}

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
      <FileWay href={href} download={download} className={classOf(kind, wide)}>
        {children}
      </FileWay>
    );
  }
  return (
    <Way href={href} className={classOf(kind, wide)}>
      {children}
    </Way>
  );
}
