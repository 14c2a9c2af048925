/** What the pages are seen on. `device` leaves day or night to the device; paper is chosen by printing. */
export const grounds = ["device", "day", "night", "glare"] as const;
export type Ground = (typeof grounds)[number];

/** The cookie that keeps the choice, so that the server answers with the right ground at once. */
export const groundCookie = "kinrow-ground";

/** Reads a stored choice; anything unknown is `device`. */
export function groundOf(stored: string | undefined): Ground {
  return grounds.find((ground) => ground === stored) ?? "device";
}

export const groundWords: Record<Ground, string> = {
  device: "As the device",
  day: "Day",
  night: "Night",
  glare: "Glare, for full sun",
};
