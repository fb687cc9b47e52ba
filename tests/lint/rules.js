/** Rules of this project's own, in ESLint's form, which oxlint runs too. */

/** A lint rule switched off in a file must say why, after `--`, or the next reader cannot tell whether it still holds. */
const reasonForDisabling = {
  meta: {
    type: 'suggestion',
    schema: [],
    messages: { missing: 'Say why the rule is off here: `eslint-disable-next-line RULE -- reason`.' },
  },
  create: (context) => ({
    Program() {
      for (const comment of context.sourceCode.getAllComments())
        if (/^\s*(es|ox)lint-disable/.test(comment.value) && !/\s--\s+\S/.test(comment.value))
          context.report({ loc: comment.loc, messageId: 'missing' })
    },
  }),
}

/** The time comes in as an argument, so that the same input always gives the same answer. */
const noClock = {
  meta: { type: 'problem', schema: [], messages: { clock: 'Take the time as an argument.' } },
  create: (context) => ({
    NewExpression(node) {
      if (node.callee.type === 'Identifier' && node.callee.name === 'Date' && node.arguments.length === 0)
        context.report({ node, messageId: 'clock' })
    },
  }),
}

export default {
  meta: { name: 'bedplate' },
  rules: { 'reason-for-disabling': reasonForDisabling, 'no-clock': noClock },
}
