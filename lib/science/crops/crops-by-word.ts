import otherNames from "./other-names.json";

interface Named {
  readonly key: string;
  readonly commonName: string;
}

const OTHER: ReadonlyMap<string, readonly string[]> = new Map(Object.entries(otherNames));

/**
 * The crops that a person may mean by a word of everyday English: those so called elsewhere ("corn", "courgette"), else those
 * whose name has every word of it, in any order and number ("runner beans", "maize"). In the order of the list, at most `most`;
 * none where more are meant than that, since then the word says too little. Nothing is chosen: the names are offered.
 */
export function cropsByWord<Crop extends Named>(written: string, crops: readonly Crop[], most = 6): Crop[] {
  const words = wordsOf(written);
  if (words.length === 0) return [];
  const elsewhere = OTHER.get(words.join(" "));
  const meant =
    elsewhere === undefined
      ? crops.filter((crop) => {
          const names = new Set(wordsOf(`${crop.key} ${crop.commonName}`));
          return words.every((word) => names.has(word));
        })
      : crops.filter((crop) => elsewhere.includes(crop.key));
  return meant.length > most ? [] : meant;
}

/** Lower case, without accents and marks, each word as one of the thing: "Beans" is "bean", "tomatoes" "tomato". */
function wordsOf(text: string): string[] {
  const plain = text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  return (plain.match(/\p{L}+/gu) ?? []).map((word) =>
    word
      .replace(/ies$/, "y")
      .replace(/(?<=o|ch|sh|x)es$/, "")
      .replace(/(?<=[^su])s$/, ""),
  );
}
