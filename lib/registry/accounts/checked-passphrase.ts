import { foldSignInName, passphraseRefusal } from "@/lib/schemas/accounts/account-fields";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";

/** A chosen passphrase was typed alike twice and is not made of the person's own names, the first that anybody tries. */
export function checkedPassphrase(passphrase: string, again: string, names: readonly string[]): Outcome<void> {
  if (passphrase !== again)
    return refused(passphraseRefusal("passphrase-differs", ["again"], "is not the same twice", "write both once more"));
  const plain = letters(passphrase);
  const rest = [...names, "kinrow"].reduce((text, name) => {
    const own = letters(name);
    return own.length < 2 ? text : text.replaceAll(own, "");
  }, plain);
  if (rest.length >= plain.length / 2 && rest.length >= 6) return accepted(undefined);
  const needed = "take words that have nothing to do with you";
  return refused(passphraseRefusal("passphrase-name", ["passphrase"], "is mostly your name", needed));
}

function letters(text: string): string {
  return foldSignInName(text).replace(/\s+/g, "");
}
