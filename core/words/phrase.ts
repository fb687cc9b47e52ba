declare const ofAPhrase: unique symbol

/**
 * A part of a sentence that is itself a message: the name of a part, what a scale showed. In the facts it is still a code with
 * its facts, and becomes a text together with the sentence.
 */
export type PhraseText = string & { readonly [ofAPhrase]: true }
