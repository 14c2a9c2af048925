import type { MemberRole } from "@/lib/schemas/accounts/member-roles";

/** A role as a word of its own. */
export const roleNames: Readonly<Record<MemberRole, string>> = {
  owner: "Owner",
  steward: "Steward",
  librarian: "Librarian",
  helper: "Helper",
  reader: "Reader",
};

/** What a role may do, told to whoever chooses it. */
export const roleNotes: Readonly<Record<MemberRole, string>> = {
  owner: "everything, and who may come in",
  steward: "the lots and grow-outs of the steward for whom they keep seed; sees the rest",
  librarian: "the desk: seed given, lent and taken back, packing and tests of the library’s lots",
  helper: "counts, marks and scores on the grow-outs you name; nothing else is changed",
  reader: "looks, and changes nothing",
};

/** The same, told to whoever was given it. */
export const roleAllows: Readonly<Record<MemberRole, string>> = {
  owner: "You may do everything here, and let others in.",
  steward: "You may write for your own lots and grow-outs, and look at the rest.",
  librarian: "You may work at the desk: give, lend, take back, pack and test.",
  helper: "You may write down what the field says on the grow-outs that are named.",
  reader: "You may look at what is kept here.",
};
