import "./globals.css";
import type { Metadata, Viewport } from "next";
import { cookies } from "next/headers";
import type { ReactNode } from "react";
import { Frame, groundCookie, groundOf } from "@/components/frame";
import { faces } from "./fonts/faces";

export const metadata: Metadata = {
  title: { default: "Kinrow", template: "%s · Kinrow" },
  description: "A registry that keeps open-pollinated varieties true, vigorous and alive.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1, colorScheme: "light dark" };

export default async function Layout({ children }: { children: ReactNode }) {
  const ground = groundOf((await cookies()).get(groundCookie)?.value);
  return (
    <html lang="en" data-ground={ground} className={faces}>
      <body>
        <Frame ground={ground}>{children}</Frame>
      </body>
    </html>
  );
}
