/*
 * A dozen pictures, cut as for a stamp: one stroke, as wide in a small one as in a large, butt ends, straight joins, on a field of 24.
 */
const cuts = {
  jar: "M8 3.5h8v3H8zM8 6.5 5.5 9.5V21h13V9.5L16 6.5M5.5 14.5h13",
  seed: "M7.5 4.5C13 1.5 20 6 19.5 13.5 19 19 14 22 9.5 20.5c-3.5-1.2-1.5-4-2.2-7C6.7 10.7 3.5 7.5 7.5 4.5ZM9 10.5c1.8 1 2 3 1.5 5",
  sprout:
    "M3.5 21h17M12 21V11.5M12 14C12 9 8.5 6.5 3.5 7c0 5 3.5 7.5 8.5 7ZM12 11.5c0-5 3.5-8 8.5-8 0 5-3.5 8.5-8.5 8Z",
  flag: "M3 21h10M7.5 21V3M7.5 4H19l-3 4.25L19 12.5H7.5",
  ledger: "M4 3.5h16v17H4zM8.5 3.5v17M11.5 8.5h5.5M11.5 12.5h5.5M11.5 16.5h3",
  scales: "M12 3v17.5M7 20.5h10M3.5 6.5h17M4.5 6.5 2 13h5.5L5 6.5M19 6.5 16.5 13H22l-2.5-6.5",
  "hand-over": "M2.5 4.5h9.5v15H2.5zM2.5 8h9.5M14.5 12H22M18.5 8l4 4-4 4",
  lineage: "M6 3.5v5l6 5.5 6-5.5v-5M12 14v7M3.5 3.5h5M15.5 3.5h5M9.5 21h5",
  search: "M10 3.5a6.5 6.5 0 1 0 0 13 6.5 6.5 0 0 0 0-13ZM14.7 14.7 21 21",
  calendar: "M3.5 5.5h17v15h-17zM3.5 10h17M8 3v5M16 3v5M7.5 14h3M13.5 14h3M7.5 17h3",
  "page-in": "M9 3.5h7l4 4v13H6V15M16 3.5v4h4M2 10.5h9.5M8 7l3.5 3.5L8 14",
  "page-out": "M18 16v4.5H4v-17h7l4 4V8M11 3.5v4h4M10.5 12H22M18.5 8.5 22 12l-3.5 3.5",
} as const;

export type IconName = keyof typeof cuts;
export const iconNames = Object.keys(cuts) as IconName[];

/** A stamp: `name`, its `size` in px (default 24). Decoration unless `label` is given. */
export function Icon({ name, size = 24, label }: { name: IconName; size?: number; label?: string }) {
  const cut = (
    <path
      d={cuts[name]}
      fill="none"
      stroke="currentColor"
      strokeWidth="1.75"
      strokeLinejoin="miter"
      vectorEffect="non-scaling-stroke"
    />
  );
  if (label) {
    return (
      <svg width={size} height={size} viewBox="0 0 24 24" role="img" aria-label={label}>
        {cut}
      </svg>
    );
  }
  return (
    <svg width={size} height={size} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      {cut}
    </svg>
  );
}
