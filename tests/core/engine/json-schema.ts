import { z } from 'zod'
import { engineSpec } from '../../../core/engine/schema.ts'

/**
 * The form of a spec file as JSON Schema, draft 2020-12: for editors, and for programs that write specs. It says which parts there are,
 * of what kind and how many; a value with its unit is a text, with an example beside it. What that text says, and whether the parts
 * agree with each other, is for `readSpec` and the audit: all that they accept is of this form.
 */
export function specJsonSchema(): object {
  return z.toJSONSchema(engineSpec, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      if (!isTrimmed(zodSchema) || jsonSchema.maxLength === undefined) return
      const inner = jsonSchema.maxLength - 2
      delete jsonSchema.minLength
      delete jsonSchema.maxLength
      jsonSchema.pattern = String.raw`^\s*\S(?:[\s\S]{0,${inner}}\S)?\s*$`
    },
  })
}

/** Whether blanks at the ends are taken off a text before its length is looked at. */
function isTrimmed({ _zod: { def } }: z.core.$ZodType): boolean {
  return def.type === 'string' && (def.checks ?? []).some(({ _zod }) => _zod.def.check === 'overwrite')
}
