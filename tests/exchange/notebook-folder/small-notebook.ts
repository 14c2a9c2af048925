import { findingLine } from "@/lib/exchange/notebook-folder/finding";
import { type NotebookReading, readNotebookFolder } from "@/lib/exchange/notebook-folder/read-notebook-folder";
import type { Notebook } from "@/lib/schemas/notebook/rows";
import { filesOf } from "./folder-of-files";

/** A small sound notebook: a kale (self-incompatible), a pea (selfing) and a spinach (separate sexes), each grown once. */
export const small: Readonly<Record<string, string>> = {
  "stewards.csv": "steward,place,kind\nOrla Fennwick,Low Barrow,grower\nThe Seed Shelf,Low Barrow,library\n",
  "varieties.csv": "variety,crop\nHollow Kale,kale\nBent Pea,pea\nMarsh Spinach,spinach\n",
  "grow_outs.csv": `grow_out,variety,steward,sown,parents,seeds_sown,plants_standing,males_standing,rogued_before_pollen,rogued_after_pollen,seed_parents,seed_shares
K,Hollow Kale,Orla Fennwick,2001-05,Kale 1,100,60,,4,2,3,plants
P,Bent Pea,Orla Fennwick,2001-05,Pea 1:0.4;Pea 2:0.6,100,80,,,,20,equal
S,Marsh Spinach,Orla Fennwick,2001-05,Spinach 1,100,80,30,5,,20,cv 0.5
`,
  "lots.csv": `lot,variety,holder,year,kind,from,inbreeding
Kale 1,Hollow Kale,Orla Fennwick,1999,founder,,
Kale 2,Hollow Kale,Orla Fennwick,2002,harvest,K,
Pea 1,Bent Pea,Orla Fennwick,1999,founder,,0.9
Pea 2,Bent Pea,The Seed Shelf,1998~,founder,,
Pea 3,Bent Pea,Orla Fennwick,2001,harvest,P,
Pea 4,Bent Pea,The Seed Shelf,2001,split,Pea 3,
Pea 5,Bent Pea,Orla Fennwick,2002,blend,Pea 3:0.5;Pea 1:0.5,
Spinach 1,Marsh Spinach,Orla Fennwick,1999,founder,,
Spinach 2,Marsh Spinach,Orla Fennwick,2001,harvest,S,
`,
  "plants.csv":
    "grow_out,plant,cell,kept,seed_grams,score:vigour\nK,1,A,yes,4.5,7\nK,2,A,yes,2,\nK,3,B,no,,3\nK,4,B,yes,6,9\n",
  "tests.csv": `test,lot,date,replicate,sown,day,normal,abnormal,hard,fresh,dead
T1,Pea 3,2002-02-01,1,25,5,10,,,,
T1,Pea 3,2002-02-01,1,25,10,12,1,0,0,2
T1,Pea 3,2002-02-01,2,25,5,20,,,,
`,
  "ledger.csv": `lot,date,kind,grams,other,notes
Pea 3,2001-09,harvested,100,,
Pea 3,2002-01-10,given,20,The Seed Shelf,
Pea 4,2002-01-10,received,20,Pea 3,
`,
};

/** Replaces, in one file of a notebook, a text that stands there exactly once. */
export function changed(file: string, from: string, to: string, texts = small): Record<string, string> {
  const before = texts[file] ?? "";
  if (before.split(from).length !== 2) throw new Error(`"${from}" does not stand once in ${file}`);
  return { ...texts, [file]: before.replace(from, () => to) };
}

/** Adds lines at the end of one file. */
export function added(file: string, lines: string, texts = small): Record<string, string> {
  return { ...texts, [file]: `${texts[file] ?? ""}${lines}\n` };
}

export function read(texts: Readonly<Record<string, string>>, existing?: Notebook): NotebookReading {
  return readNotebookFolder(filesOf(texts), { existing });
}

export function faultsOf(texts: Readonly<Record<string, string>>, existing?: Notebook): string[] {
  return read(texts, existing).faults.map(findingLine);
}

export function warningsOf(texts: Readonly<Record<string, string>>, existing?: Notebook): string[] {
  return read(texts, existing).warnings.map(findingLine);
}

/** FILE:LINE of each fault. */
export function placesOf(texts: Readonly<Record<string, string>>, existing?: Notebook): string[] {
  return read(texts, existing).faults.map(({ file, line }) => (line === null ? file : `${file}:${line}`));
}

/** The notebook that some texts make. */
export function notebookOf(texts: Readonly<Record<string, string>>): Notebook {
  const { notebook, faults } = read(texts);
  if (notebook === null) throw new Error(faults.map(findingLine).join("\n"));
  return notebook;
}
