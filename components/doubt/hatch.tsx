/** The hatching that means assumed everywhere: a pattern of 45° lines, referred to by `url(#id)`. */
export function Hatch({ id, gap = 4.5, stroke = "var(--assumed)" }: { id: string; gap?: number; stroke?: string }) {
  return (
    <pattern id={id} width={gap} height={gap} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path d={`M0 0v${gap}`} stroke={stroke} strokeWidth={gap * 0.62} />
    </pattern>
  );
}
