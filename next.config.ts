import type { NextConfig } from "next";

const config: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  // A page that stays on this machine need not be made small for the way.
  compress: process.env.KINROW_SHARED === "yes",
  devIndicators: false,
  experimental: {
    // A page that refuses somebody says so with its own status and page (app/forbidden.tsx).
    authInterrupts: true,
    // What is sent passes proxy.ts, where the framework cuts it off after so much: an upload of 64 MB with its borders has to get through.
    proxyClientMaxBodySize: "66mb",
  },
  turbopack: {
    resolveAlias: {
      "@stdlib/assert-has-generator-support": { browser: "./components/in-browser/generators-are-there.cjs" },
    },
  },
  // Types are checked whole by npm test; a steward's first start need not wait for it.
  typescript: { ignoreBuildErrors: true },
};

export default config;
