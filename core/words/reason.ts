declare const ofAProblem: unique symbol

/**
 * The sentence of one problem within the sentence of another, which it is the reason of. In the facts of the other one it is
 * still a problem, and becomes a sentence together with it.
 */
export type ReasonText = string & { readonly [ofAProblem]: true }
