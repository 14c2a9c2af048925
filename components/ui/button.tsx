import type { AnchorHTMLAttributes, ButtonHTMLAttributes } from "react";
import styles from "./button.module.css";

/** chief: the one thing to do here; plain: another; waiting: what waits for a hand; quiet: words only. */
export type ButtonKind = "chief" | "plain" | "waiting" | "quiet";

/** The classes of what looks like a button. */
export function buttonClass(kind: ButtonKind, wide: boolean | undefined): string {
  return [styles.button, styles[kind], wide ? styles.wide : ""].filter(Boolean).join(" ");
}

/** A button; `type` is "button" unless said. `wide` fills the line, for a thumb. */
export function Button({
  kind = "plain",
  wide,
  type = "button",
  ...rest
}: { kind?: ButtonKind; wide?: boolean } & Omit<ButtonHTMLAttributes<HTMLButtonElement>, "className">) {
  return <button {...rest} type={type} className={buttonClass(kind, wide)} />;
}

/** A link that looks like a button and loads its page anew: to and from the field, and where a page is kept light. */
export function ButtonAnchor({
  kind = "plain",
  wide,
  ...rest
}: { kind?: ButtonKind; wide?: boolean; href: string } & Omit<AnchorHTMLAttributes<HTMLAnchorElement>, "className">) {
  return <a {...rest} className={buttonClass(kind, wide)} />;
}
