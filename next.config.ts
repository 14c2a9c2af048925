import type { NextConfig } from "next";

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  devIndicators: false,
  // A page that refuses somebody says so with its own status and page (app/forbidden.tsx).
  experimental: { authInterrupts: true },
  // Types are checked whole by npm test; a steward's first start need not wait for it.
  typescript: { ignoreBuildErrors: true },
};

export default config;
