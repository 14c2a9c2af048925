import type { Draws } from "../telling/draws";

/** A bean lying on its side, speckled, about 90 wide, around the middle 0 0. */
function bean(draws: Draws, coat: string, speck: string): string {
  const specks = Array.from({ length: 14 }, () => {
    const [x, y] = [draws.whole(-34, 34), draws.whole(-20, 14)];
    return `<ellipse cx="${x}" cy="${y}" rx="${draws.whole(2, 6)}" ry="${draws.whole(1, 4)}" fill="${speck}"/>`;
  });
  return `<path d="M-46 2C-48-24-26-32 0-32S48-24 46 2C44 24 26 30 15 20 7 12-7 12-15 20-26 30-44 24-46 2Z" fill="${coat}" stroke="#3b2a20" stroke-width="2"/>
    ${specks.join("")}<path d="M-24-20C-10-27 12-27 26-19" stroke="#ffffff" stroke-opacity="0.5" stroke-width="5" fill="none" stroke-linecap="round"/>`;
}

/** Seeds in rows on a cloth, none lying quite as the next; `root`: which of them have put out a root. */
export function seedsOnCloth(
  draws: Draws,
  { rows, columns, root = () => false }: { rows: number; columns: number; root?: (place: number) => boolean },
): string {
  const [width, height] = [800 / columns, 540 / rows];
  const threads = Array.from({ length: 40 }, (_one, at) => `<path d="M0 ${at * 15}H800M${at * 20} 0V600" />`);
  const seeds = Array.from({ length: rows * columns }, (_one, place) => {
    const x = ((place % columns) + 0.5) * width + draws.whole(-10, 10);
    const y = (Math.floor(place / columns) + 0.5) * height + 20 + draws.whole(-8, 8);
    const out = `<path d="M6 18C10 44 ${draws.whole(-24, 4)} 52 ${draws.whole(-10, 30)} 78" stroke="#f4f0dc" stroke-width="9" fill="none" stroke-linecap="round"/>`;
    return `<g transform="translate(${x} ${y}) rotate(${draws.whole(-35, 35)})"><ellipse cx="4" cy="18" rx="44" ry="16" fill="#000" fill-opacity="0.18"/>${root(place) ? out : ""}${bean(draws, draws.chance(0.3) ? "#c9a77c" : "#d8bf98", "#6b2c26")}</g>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600"><rect width="800" height="600" fill="#dcd8cc"/>
    <g stroke="#c6c1b2" stroke-width="1">${threads.join("")}</g>${seeds.join("")}</svg>`;
}
