import type { MetadataRoute } from "next";

/** What a phone is told of the field, so that it stands on the home screen like any other app. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    id: "/field",
    name: "Kinrow in the field",
    short_name: "Kinrow",
    description: "Marks, scores, rogue passes and harvests, recorded among the plants with no signal.",
    start_url: "/field",
    // signing in again stays inside the app
    scope: "/",
    display: "standalone",
    background_color: "#221a14",
    theme_color: "#221a14",
    icons: [
      { src: "/icon.svg", sizes: "any", type: "image/svg+xml" },
      { src: "/field/icon/192", sizes: "192x192", type: "image/png" },
      { src: "/field/icon/512", sizes: "512x512", type: "image/png" },
      { src: "/field/icon/512", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
  };
}
