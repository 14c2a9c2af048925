import type { Draws } from "../telling/draws";

/** One maize plant from its foot at 0 0, so many pixels high. */
function plant(draws: Draws, high: number, tasselled: boolean): string {
  const leaves = Array.from({ length: Math.max(3, Math.round(high / 45)) }, (_one, at) => {
    const y = -(high * 0.12) - at * (high * 0.13);
    const side = at % 2 === 0 ? 1 : -1;
    const long = Math.max(high * (0.26 - at * 0.01), 44) + draws.whole(-6, 6);
    const drop = draws.whole(2, 18);
    return `<path d="M0 ${y}C${side * long * 0.4} ${y - high * 0.12} ${side * long * 0.8} ${y - high * 0.05} ${side * long} ${y + drop}C${side * long * 0.7} ${y} ${side * long * 0.35} ${y - high * 0.04} 0 ${y + high * 0.05}Z" fill="${draws.chance(0.5) ? "#5d7f3a" : "#4d7033"}"/>`;
  });
  const tassel = [-16, -7, 0, 8, 17].map(
    (x) =>
      `<path d="M0 ${-high}Q${x * 0.4} ${-high - 22} ${x} ${-high - 34}" stroke="#c8ab62" stroke-width="3" fill="none"/>`,
  );
  return `<path d="M0 0V${-high}" stroke="#6f8c46" stroke-width="${Math.max(4, high / 32)}"/>${leaves.join("")}${tasselled ? tassel.join("") : ""}`;
}

const ground = `<rect width="800" height="600" fill="#b9c8cf"/><path d="M0 300Q200 262 400 290T800 276V600H0Z" fill="#90a06a"/>
  <path d="M0 430H800V600H0Z" fill="#6a4f39"/>`;

const picture = (inside: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600">${ground}${inside}</svg>`;

/** Rows of maize in tassel, the nearer the larger. */
export function maizeRows(draws: Draws): string {
  const rows = [
    { y: 452, high: 150, step: 54 },
    { y: 500, high: 205, step: 78 },
    { y: 566, high: 290, step: 116 },
  ];
  const plants = rows.flatMap(({ y, high, step }) =>
    Array.from({ length: Math.ceil(800 / step) }, (_one, at) => {
      const x = at * step + draws.whole(8, step - 20);
      return `<g transform="translate(${x} ${y})">${plant(draws, high + draws.whole(-22, 22), true)}</g>`;
    }),
  );
  return picture(plants.join(""));
}

/** One plant before a staff of which each band is 25 cm. */
export function maizeByStaff(draws: Draws, high: number): string {
  const bands = Array.from(
    { length: 9 },
    (_one, at) =>
      `<rect x="560" y="${500 - at * 50}" width="18" height="50" fill="${at % 2 === 0 ? "#f2efe6" : "#a33a2a"}"/>`,
  );
  return picture(`${bands.join("")}<g transform="translate(380 552)">${plant(draws, high, high > 240)}</g>`);
}

/** An ear laid on a board, its husk turned back: ten rows of dark kernels. */
export function maizeEar(draws: Draws): string {
  const kernels = Array.from({ length: 22 }, (_one, along) =>
    Array.from({ length: 5 }, (_other, row) => {
      const narrow = 1 - (along / 22) ** 3 * 0.55 - Math.max(0, 2 - along) * 0.13;
      const [x, y] = [220 + along * 20.5, 300 + (row - 2) * 31 * narrow];
      const coat = draws.chance(0.12) ? "#7d3346" : draws.pick(["#2b2036", "#33263f", "#261c30"]);
      return `<rect x="${x}" y="${y - 14 * narrow}" width="20" height="${28 * narrow}" rx="8" fill="${coat}"/><circle cx="${x + 7}" cy="${y - 5 * narrow}" r="3" fill="#fff" fill-opacity="0.35"/>`;
    }).join(""),
  );
  const husk = [-64, -30, 12, 52].map(
    (turn) =>
      `<path d="M214 300C150 ${300 + turn} 96 ${296 + turn * 1.6} 40 ${300 + turn * 2.4}C92 ${330 + turn * 1.4} 150 ${326 + turn * 0.8} 214 314Z" fill="#d9cf9f" stroke="#b3a56c"/>`,
  );
  const boards = [100, 200, 300, 400, 500].map((y) => `<path d="M0 ${y}H800" stroke="#8a6a49" stroke-width="3"/>`);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="800" height="600"><rect width="800" height="600" fill="#a98a65"/>${boards.join("")}
    <ellipse cx="440" cy="392" rx="270" ry="26" fill="#000" fill-opacity="0.22"/>${husk.join("")}<path d="M200 300C200 214 420 206 560 232 640 246 690 276 690 300S640 354 560 368C420 394 200 386 200 300Z" fill="#3b2e45"/>${kernels.join("")}</svg>`;
}
