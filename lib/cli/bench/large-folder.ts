/** A folder of any number of lots for measuring: plain, regular and the same every time. Not a story; the demonstration tells one. */
export function largeFolder(lots: number, ledgerLines = 6, testLines = 8): Map<string, Uint8Array> {
  const crops = ["maize-field", "bean-common", "kale", "lettuce", "rye", "spinach", "carrot", "pea", "tomato", "leek"];
  const varieties = Math.max(1, Math.round(lots / 50));
  const files: Record<string, string[]> = {
    "stewards.csv": [
      "steward,place,kind",
      ...Array.from({ length: 12 }, (_, i) => `Keeper ${i + 1},Bench Row ${i % 4},grower`),
    ],
    "varieties.csv": [
      "variety,crop",
      ...Array.from({ length: varieties }, (_, i) => `Bench ${i + 1},${crops[i % crops.length]}`),
    ],
    "grow_outs.csv": [
      "grow_out,variety,steward,sown,parents,seeds_sown,plants_standing,males_standing,seed_parents,seed_shares",
    ],
    "lots.csv": ["lot,variety,holder,year,kind,from,thousand_seed_grams"],
    "tests.csv": ["test,lot,date,replicate,sown,day,normal"],
    "ledger.csv": ["lot,date,kind,grams,other"],
  };
  const add = (file: string, ...cells: (string | number)[]) => files[file]?.push(cells.join(","));
  for (let lot = 0; lot < lots; lot += 1) {
    const variety = lot % varieties;
    const generation = Math.floor(lot / varieties);
    const year = 1985 + (generation % 40);
    const founder = generation < 2;
    const before = lot - varieties;
    if (!founder) {
      const males = crops[variety % crops.length] === "spinach" ? 40 : "";
      add(
        "grow_outs.csv",
        `B${lot}`,
        `Bench ${variety + 1}`,
        `Keeper ${(lot % 12) + 1}`,
        `${year}-04`,
        `L ${before}:0.75;L ${before - varieties}:0.25`,
        300,
        120,
        males,
        30 + (lot % 40),
        "equal",
      );
    }
    add(
      "lots.csv",
      `L ${lot}`,
      `Bench ${variety + 1}`,
      `Keeper ${(lot % 12) + 1}`,
      `${year}-10`,
      founder ? "founder" : "harvest",
      founder ? "" : `B${lot}`,
      20 + (lot % 300),
    );
    add("ledger.csv", `L ${lot}`, `${year}-10-20`, founder ? "received" : "harvested", 400, "");
    for (let line = 1; line < ledgerLines; line += 1) {
      add(
        "ledger.csv",
        `L ${lot}`,
        `${year + line}-0${(line % 8) + 1}-1${lot % 9}`,
        line % 2 ? "sown" : "given",
        3 + (lot % 7),
        line % 2 ? "" : "a neighbour",
      );
    }
    for (let line = 0; line < testLines && lot % 2 === 0; line += 1) {
      const replicate = Math.floor(line / 2) + 1;
      add(
        "tests.csv",
        `P${lot}`,
        `L ${lot}`,
        `${year + 1}-02-1${lot % 9}`,
        replicate,
        25,
        line % 2 ? 14 : 7,
        line % 2 ? lot % 4 : 14 + ((lot * 7 + line * 3) % 8),
      );
    }
  }
  const encoder = new TextEncoder();
  return new Map(Object.entries(files).map(([name, lines]) => [name, encoder.encode(`${lines.join("\r\n")}\r\n`)]));
}
