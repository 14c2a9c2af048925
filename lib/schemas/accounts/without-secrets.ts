const secrets = ["passphrase", "again", "now"];

/** What was typed into a form about an account, without its passphrases: they are never sent back. */
export function withoutSecrets(typed: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(typed).filter(([name]) => !secrets.includes(name)));
}
