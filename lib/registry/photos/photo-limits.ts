/** The most bytes that a picture may have as it comes: 30 MiB. */
export const mostBytesSent = 30 * 1024 * 1024;
/** The most bytes that a stored picture has: 2 MiB. */
export const mostBytesStored = 2 * 1024 * 1024;
/** The longest side of a stored picture, in pixels. */
export const longestSide = 1600;
/** The most pixels that a picture may have as it comes. A small file can state any size, and is unpacked whole. */
export const mostPixels = 130_000_000;
/** The most pictures that come by one form. */
export const mostAtOnce = 20;
