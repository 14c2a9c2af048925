import sharp from "sharp";

/** The name's picture on its own ground, with room around it: phones cut icons round. */
const sign = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 28 28"><rect width="28" height="28" fill="#221a14"/><g transform="translate(4.2 4) scale(0.7)" fill="none" stroke="#ece4d4" stroke-width="1.75"><path d="M3 23h22"/><path d="M7.5 18.2C7.5 12.5 10.5 10 14 10s6.5 2.5 6.5 8.2"/><ellipse cx="7.5" cy="20.2" rx="2.9" ry="2.2" fill="#ece4d4" transform="rotate(-12 7.5 20.2)"/><ellipse cx="20.5" cy="20.2" rx="2.9" ry="2.2" fill="#ece4d4" transform="rotate(10 20.5 20.2)"/><ellipse cx="14" cy="7" rx="3.6" ry="2.8" fill="#221a14" transform="rotate(-8 14 7)"/></g></svg>`;

const sizes = ["180", "192", "512"];

/** The sign of the field as a picture of one of these sizes, for home screens that take no drawing. */
export async function GET(_request: Request, { params }: { params: Promise<{ size: string }> }): Promise<Response> {
  const { size } = await params;
  if (!sizes.includes(size)) return new Response("There is no icon of this size.\n", { status: 404 });
  const picture = await sharp(Buffer.from(sign), { density: 1400 }).resize(Number(size)).png().toBuffer();
  return new Response(new Uint8Array(picture), {
    headers: { "content-type": "image/png", "cache-control": "public, max-age=86400" },
  });
}
