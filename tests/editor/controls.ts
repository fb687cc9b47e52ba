/** What a person enters something with, and how a form uses it. */
export type Control =
  | { readonly kind: 'field'; readonly props: FieldProps }
  | { readonly kind: 'typed'; readonly props: TypedProps }
  | { readonly kind: 'select'; readonly props: SelectProps }
  | { readonly kind: 'tick'; readonly props: { readonly ontick: (is: boolean) => unknown } }
  | { readonly kind: 'ticks'; readonly props: TicksProps }
  | { readonly kind: 'colour'; readonly props: { readonly onchoose: (colour: string) => unknown } }
export type ControlKind = Control['kind']

interface FieldProps {
  readonly path: readonly (string | number)[]
  readonly kind?: 'size' | 'words' | 'number'
  readonly optional?: boolean
}
interface TypedProps {
  readonly value: string
  readonly onenter: (typed: string) => unknown
}
interface SelectProps {
  readonly options: readonly { readonly value: string }[]
  readonly onchoose: (value: string) => unknown
}
interface TicksProps {
  readonly all: readonly { readonly id: string }[]
  readonly ontoggle: (id: string) => unknown
}

let noted: Control[] = []

/** Called in the place of a control, with what it is given. */
export function note(control: Control) {
  noted.push(control)
}

/** The controls that were noted since this was called before. */
export function takeNoted(): readonly Control[] {
  const taken = noted
  noted = []
  return taken
}
