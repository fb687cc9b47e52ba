import { join } from 'node:path'
import ts from 'typescript'

/** A message of the English table by its path, with facts to call it with; none for a text that has no facts. */
export interface Sample {
  readonly path: readonly string[]
  readonly calls: readonly (readonly unknown[])[] | null
}

const core = join(import.meta.dirname, '../../../core')
/** Above this, not each combination of the alternatives is called, but each alternative once at least. */
const mostCombinations = 48

/**
 * Every message of the table, with facts made from the types of its parameters: of alternatives each, of a text and of a number
 * one that no other fact has, both in digits, so that it is found again in what the message makes of it.
 */
export function samplesOfEnglish(): readonly Sample[] {
  const file = join(core, 'words/en/index.ts')
  const read = ts.readConfigFile(join(core, 'tsconfig.json'), (path) => ts.sys.readFile(path))
  const { options } = ts.parseJsonConfigFileContent(read.config, ts.sys, core)
  const program = ts.createProgram([file], { ...options, noEmit: true })
  const checker = program.getTypeChecker()
  const source = program.getSourceFile(file)!
  const table = checker
    .getExportsOfModule(checker.getSymbolAtLocation(source)!)
    .find(({ name }) => name === 'en')!

  const samples: Sample[] = []
  let last = 30
  const number = () => ++last

  function walk(type: ts.Type, path: readonly string[]): void {
    const [signature] = type.getCallSignatures()
    if (signature !== undefined) {
      const facts = signature.parameters.map((parameter) => valuesOf(checker.getTypeOfSymbol(parameter)))
      samples.push({ path, calls: combined(facts) })
    } else if (isText(type) || checker.isArrayType(type) || checker.isTupleType(type)) {
      samples.push({ path, calls: null })
    } else {
      for (const property of type.getProperties())
        walk(checker.getTypeOfSymbol(property), [...path, property.name])
    }
  }

  function isText(type: ts.Type): boolean {
    if (type.isUnion()) return type.types.every(isText)
    if (type.isIntersection()) return type.types.some(isText)
    return (type.flags & (ts.TypeFlags.StringLike | ts.TypeFlags.Null)) !== 0
  }

  function valuesOf(type: ts.Type): readonly unknown[] {
    if (type.flags & ts.TypeFlags.Undefined) return [undefined]
    if (type.flags & ts.TypeFlags.Null) return [null]
    if (type.isLiteral()) return [type.value]
    if (type.flags & ts.TypeFlags.BooleanLiteral) return [checker.typeToString(type) === 'true']
    if (type.isUnion()) return type.types.flatMap(valuesOf)
    if (isText(type)) return [`7${number()}`]
    if (type.flags & ts.TypeFlags.Number) return [number()]
    if (checker.isTupleType(type))
      return combined(checker.getTypeArguments(type as ts.TypeReference).map(valuesOf))
    if (checker.isArrayType(type)) {
      const [of] = checker.getTypeArguments(type as ts.TypeReference)
      const [first = [], second = []] = [valuesOf(of!), valuesOf(of!)]
      return first.map((value, index) => [value, second[index]])
    }
    const names = type.getProperties()
    // How many decimals a number is written with is no number to be seen, and has an upper end.
    const values = names.map((each) =>
      each.name === 'decimals' ? [2] : valuesOf(checker.getTypeOfSymbol(each)),
    )
    return combined(values).map((values) =>
      Object.fromEntries(values.map((value, index) => [names[index]!.name, value])),
    )
  }

  walk(checker.getTypeOfSymbol(table), [])
  return samples
}

/** One value of each: in all combinations, or where these are too many with the alternatives of all passed through together. */
function combined(alternatives: readonly (readonly unknown[])[]): readonly (readonly unknown[])[] {
  const combinations = alternatives.reduce((count, { length }) => count * length, 1)
  if (combinations <= mostCombinations)
    return alternatives.reduce<readonly (readonly unknown[])[]>(
      (before, values) => before.flatMap((each) => values.map((value) => [...each, value])),
      [[]],
    )
  const most = Math.max(...alternatives.map(({ length }) => length))
  return Array.from({ length: most }, (_, index) =>
    alternatives.map((values) => values[index % values.length]),
  )
}
