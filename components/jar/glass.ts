/** The glass of every jar that is drawn, in the drawing's own units: its outline, its neck, and the room that it holds. */
export const glass = {
  outline: "M47 30v12C47 52 14 52 14 78v158c0 9 4 13 13 13h112c9 0 13-4 13-13V78c0-26-33-26-33-36V30",
  neck: "M40 14h86v16H40zM40 20h86",
  inside: "M17 79c0-16 13-21 24-25h84c11 4 24 9 24 25v157c0 7-3 10-10 10H27c-7 0-10-3-10-10Z",
  /** where a full jar ends, and where an empty one begins */
  top: 66,
  bottom: 246,
  left: 17,
  right: 149,
} as const;
