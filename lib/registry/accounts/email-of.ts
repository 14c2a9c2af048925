/** The sign-in library wants an address for every account. There is no mail here: this one can receive none (RFC 2606). */
export function emailOf(userId: string): string {
  return `${userId}@kinrow.invalid`;
}
