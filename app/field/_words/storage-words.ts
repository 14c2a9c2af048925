/** Whether what is stored stays until a person clears it; null: the browser does not say. */
export function lastingInWords(lasting: boolean | null): string {
  if (lasting === true) return "The browser has promised to keep what is stored here until you clear it yourself.";
  const weeks =
    "some clear what was not opened for a week. Put the field on the home screen, open it now and then, and send what waits soon.";
  return lasting === false
    ? `The browser would not promise to keep what is stored here: ${weeks}`
    : `The browser does not say how long it keeps what is stored: ${weeks}`;
}

/** Room on the phone, in plain words; null: the browser does not say. */
export function roomInWords(bytes: number | null): string {
  if (bytes === null) return "How much room is left, the browser does not say.";
  const megabytes = Math.floor(bytes / 1_000_000);
  const photos = Math.floor(bytes / 500_000);
  if (megabytes < 20) return `Only ${megabytes} MB are left here: make room before you take photos.`;
  return `Room for ${photos > 2000 ? "thousands of" : `about ${photos}`} photos.`;
}
