/** The name's picture: two seeds of a row and the one that came of both. Decoration: the name stands beside it. */
export function NameMark({ size = 28 }: { size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 28 28" aria-hidden="true" focusable="false">
      <g fill="none" stroke="currentColor" strokeWidth="1.5">
        <path d="M1 23.5h26" />
        <path d="M6.5 18.5C6.5 12 10 9.5 14 9.5s7.5 2.5 7.5 9" />
        <ellipse cx="6.5" cy="20.6" rx="3" ry="2.3" fill="currentColor" transform="rotate(-12 6.5 20.6)" />
        <ellipse cx="21.5" cy="20.6" rx="3" ry="2.3" fill="currentColor" transform="rotate(10 21.5 20.6)" />
        <ellipse cx="14" cy="6.2" rx="3.6" ry="2.8" fill="var(--ground)" transform="rotate(-8 14 6.2)" />
      </g>
    </svg>
  );
}
