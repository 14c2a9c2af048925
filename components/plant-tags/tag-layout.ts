import { type Lie, margin, type Paper, sizeOf } from "../field-sheet/paper";

/** hang: with a hole for a tie. loop: a strip that goes round the stem and through its own slit. In millimetres, to be cut out. */
export const tagKinds = {
  hang: { width: 62, height: 32 },
  loop: { width: 190, height: 20 },
} as const;
export type TagKind = keyof typeof tagKinds;

export interface TagLayout {
  readonly paper: Paper;
  readonly lie: Lie;
  readonly kind: TagKind;
  readonly width: number;
  readonly height: number;
  readonly across: number;
  readonly down: number;
}

/** How many tags of a kind lie on a sheet. */
export function tagLayout(paper: Paper, kind: TagKind): TagLayout {
  const sheet = sizeOf(paper, "portrait");
  const { width, height } = tagKinds[kind];
  const across = Math.floor((sheet.width - 2 * margin) / width);
  const down = Math.floor((sheet.height - 2 * margin) / height);
  return { paper, lie: "portrait", kind, width, height, across, down };
}

/** How large a tag is written, in millimetres: as large as its place allows, in a face whose figures are about half as wide as high. */
export function sizeOfNumber(tag: string, width: number, tallest: number): number {
  return Math.max(3, Math.min(tallest, Math.floor((width / (Math.max(1, tag.length) * 0.52)) * 10) / 10));
}
