"use client";

import { useEffect, useRef, useState } from "react";
import styles from "./picture.module.css";
import { StandIn } from "./stand-in";

/**
 * A photograph, as it is or at the height of a strip. Where its file is gone or cannot be drawn, a drawn frame with words stands in its place and
 * takes as much room. `there` false: the server knows already that the file is gone.
 */
export function Picture({
  hash,
  alt,
  width,
  height,
  there,
  whole,
}: {
  hash: string;
  alt: string;
  width: number;
  height: number;
  there: boolean;
  /** as wide as the page lets it be; else as high as a strip */
  whole?: boolean;
}) {
  const image = useRef<HTMLImageElement>(null);
  const [broken, setBroken] = useState(!there);
  useEffect(() => {
    // It may have failed before the page had woken.
    if (image.current?.complete && image.current.naturalWidth === 0) setBroken(true);
  }, []);
  const shape = whole ? styles.whole : styles.small;
  if (broken) return <StandIn alt={alt} width={width} height={height} className={shape} />;
  return (
    <img
      ref={image}
      className={`${styles.picture} ${shape}`}
      src={`/photos/${hash}`}
      alt={alt}
      width={width}
      height={height}
      loading={whole ? "eager" : "lazy"}
      decoding="async"
      onError={() => setBroken(true)}
    />
  );
}
