/** The same table in any language: the type of a function that chooses one of several texts has none of them in it. */
export type Table<Part> = Part extends (...facts: infer Facts) => infer Text
  ? (...facts: Facts) => Text extends string ? string : Text
  : Part extends string
    ? string
    : { readonly [Name in keyof Part]: Table<Part[Name]> }
