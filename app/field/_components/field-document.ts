/** The files of the field's document, as scripts/field-bundle.mjs lists them. */
export interface FieldFiles {
  readonly script: string;
  readonly style: string;
  /** parts that the first script takes in before it runs */
  readonly parts: readonly string[];
  readonly all: readonly string[];
}

/**
 * The one document of the field. It holds nothing of anybody, so that a phone may keep it and open it with no signal and no sign-in; `nonce` is the one
 * of this answer's policy, where it has one.
 */
export function fieldDocument({ script, style, parts }: FieldFiles, nonce: string | null): string {
  const own = nonce === null ? "" : ` nonce="${nonce}"`;
  const ahead = parts.map((part) => `<link rel="modulepreload" href="/field/files/${part}"${own}>\n`).join("");
  return `<!doctype html>
<html lang="en" data-ground="device">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<meta name="color-scheme" content="light dark">
<title>In the field · Kinrow</title>
<meta name="description" content="Marks, scores, rogue passes and harvests, recorded among the plants with no signal.">
<link rel="manifest" href="/manifest.webmanifest">
<link rel="icon" href="/icon.svg" type="image/svg+xml">
<link rel="apple-touch-icon" href="/field/icon/180">
<meta name="apple-mobile-web-app-capable" content="yes">
<meta name="apple-mobile-web-app-title" content="Kinrow">
<link rel="stylesheet" href="/field/files/${style}">
${ahead}<script type="module" src="/field/files/${script}"${own}></script>
</head>
<body>
<div id="field"><p>The field is being opened …</p></div>
<noscript><p>The field works with script alone: switch it on in this browser, or take a printed field sheet.</p></noscript>
</body>
</html>
`;
}

/** The nonce of a Content Security Policy; null where it names none, or nothing that may stand in a document. */
export function nonceOf(policy: string | null): string | null {
  return /'nonce-([\w+/=-]+)'/.exec(policy ?? "")?.[1] ?? null;
}
