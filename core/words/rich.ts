/**
 * A text of which some parts stand out: `strong` in heavy type, `code` as a code or the name of a file is set, `whole` never parted
 * by the end of a line, as a date is.
 */
export type RichText = readonly (string | StandingOut)[]

type StandingOut = { readonly strong: string } | { readonly code: string } | { readonly whole: string }
