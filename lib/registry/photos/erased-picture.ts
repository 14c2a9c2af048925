/** What stands in the history in place of a picture that was erased: of its file and of the words beside it. */
export const erasedPicture = "(picture erased)";
