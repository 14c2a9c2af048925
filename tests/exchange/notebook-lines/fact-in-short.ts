import type { Amount, Count, LotReference, Understood } from "@/lib/exchange/notebook-lines/reading";

/** A fact in a few signs, so that expected readings can be written by hand: `plants ~40`, `?seed-parents 12 ears`. `?` is doubtful. */
export function factInShort(fact: Understood): string {
  return `${fact.certainty === "doubtful" ? "?" : ""}${fact.kind}${told(fact)}`;
}

/** `40`, `~40` (about), `30..40`, `40..` (over), `..40` (under), `"a few"` (words alone) */
function number(count: Count | null): string {
  if (count === null) return "unsaid";
  const { value, low, high, approximate } = count;
  const about = approximate ? "~" : "";
  if (value !== null) return `${about}${value}`;
  if (low === null && high === null) return `"${count.words}"`;
  return `${about}${low ?? ""}..${high ?? ""}`;
}

function amount(given: Amount | null): string {
  if (given === null) return "";
  const isWords = given.value === null && given.low === null && given.high === null;
  return isWords ? ` "${given.words}"` : ` ${number(given)} ${given.givenUnit ?? given.unit}`;
}

function lot(reference: LotReference | null): string {
  if (reference === null) return "";
  if (reference.kind === "year") return reference.year;
  return reference.kind === "whose" ? `of ${reference.whose}` : reference.kind;
}

function told(fact: Understood): string {
  switch (fact.kind) {
    case "year":
      return ` ${fact.value.edtf ?? "unsaid"}`;
    case "harvest-year":
      return ` ${fact.value.edtf}`;
    case "day":
    case "sown-on":
      return ` ${fact.value.month}-${fact.value.day ?? "?"}`;
    case "plants":
      return ` ${number(fact.value.count)}${fact.value.stage === "standing" ? "" : ` ${fact.value.stage}`}`;
    case "emerged":
    case "flagged":
    case "seeds-sown":
      return ` ${number(fact.value.count)}`;
    case "seed-parents": {
      const { all, count, counted, of } = fact.value;
      const unit = counted === "plants" ? "" : ` ${counted}`;
      return ` ${all ? "all" : number(count)}${unit}${of === null ? "" : ` of ${number(of)}`}`;
    }
    case "rogued": {
      const { count, timing, looked } = fact.value;
      return ` ${number(count)}${looked === null ? "" : ` of ${number(looked)}`}${timing === null ? "" : ` ${timing}`}`;
    }
    case "sown-amount":
    case "harvested":
    case "amount":
    case "on-hand":
    case "discarded":
      return amount(fact.value.amount);
    case "seed-weight":
      return ` ${fact.value.seeds} = ${fact.value.grams} g`;
    case "germination": {
      const { up, of, percent, how, where, days } = fact.value;
      const share = percent !== null ? ` ${number(percent)} %` : up !== null ? ` ${number(up)}/${number(of)}` : "";
      const on = lot(fact.value.lot) === "" ? "" : ` of ${lot(fact.value.lot)}`;
      return `${share}${how === null ? "" : ` ${how}`}${days === null ? "" : ` day ${days}`}${where === "test" ? " tested" : ""}${on}`;
    }
    case "given": {
      const { to, manner } = fact.value;
      const which = lot(fact.value.lot) === "" ? "" : ` of ${lot(fact.value.lot)}`;
      return `${amount(fact.value.amount)}${which} to ${to}${manner === "gift" ? "" : ` (${manner})`}`;
    }
    case "received":
      return `${amount(fact.value.amount)} from ${fact.value.from}${fact.value.how === "not-said" ? "" : ` (${fact.value.how})`}`;
    case "sown-from":
      return ` ${fact.value.lots.map(lot).join(" + ")}`;
    case "blend": {
      const parts = fact.value.parts.map((part) => `${part.share === null ? "" : `${part.share} `}${lot(part.lot)}`);
      return ` ${[...(fact.value.withOwn ? ["what is in hand"] : []), ...parts].join(" + ")}`;
    }
    case "split":
      return `${amount(fact.value.amount)} with ${fact.value.to}`;
    case "grown":
    case "gap":
      return "";
    case "failed":
      return fact.value.cause === null ? "" : ` ${fact.value.cause}`;
    case "lost":
      return ` ${number(fact.value.count)}${fact.value.cause === null ? "" : ` ${fact.value.cause}`}`;
    case "suspected-cross":
      return fact.value.other === null ? "" : ` ${fact.value.other}`;
    case "off-types":
      return ` ${number(fact.value.count)}`;
    case "neighbour":
      return fact.value.distanceMetres === null ? "" : ` ${fact.value.distanceMetres} m`;
    case "isolation":
      return ` ${fact.value.method ?? "unsaid"}`;
    case "shares":
      return ` ${[fact.value.shares, fact.value.bulked].filter((part) => part !== null).join(", ")}`;
    case "purpose":
      return ` ${fact.value.purpose}`;
  }
}
