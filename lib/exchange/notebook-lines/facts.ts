import type { FactKind, FactOf, Span, Understood } from "./reading";

export type Told<Kind extends FactKind> = Span & Pick<Understood, "certainty"> & FactOf<Kind>;

/** The understood pieces of one line, by kind. */
export class Facts {
  constructor(readonly list: readonly Understood[]) {}

  all<Kind extends FactKind>(kind: Kind): Told<Kind>[] {
    return this.list.filter((fact): fact is Understood & Told<Kind> => fact.kind === kind);
  }

  first<Kind extends FactKind>(kind: Kind): Told<Kind> | null {
    return this.all(kind)[0] ?? null;
  }

  has(...kinds: readonly FactKind[]): boolean {
    return this.list.some((fact) => kinds.includes(fact.kind));
  }

  /** Where in the line the last fact of these kinds ends; -1 where there is none. */
  lastPlace(...kinds: readonly FactKind[]): number {
    return this.list.reduce((place, fact) => (kinds.includes(fact.kind) ? Math.max(place, fact.to) : place), -1);
  }
}
