import svelte from 'eslint-plugin-svelte'
import { defineConfig } from 'eslint/config'
import typescript from 'typescript-eslint'

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
        if (/^\s*eslint-disable/.test(comment.value) && !/\s--\s+\S/.test(comment.value))
          context.report({ loc: comment.loc, messageId: 'missing' })
    },
  }),
}

export default defineConfig(
  { ignores: ['dist/', 'test-results/'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  typescript.configs.recommendedTypeChecked,
  svelte.configs.recommended,
  {
    plugins: { bedplate: { rules: { 'reason-for-disabling': reasonForDisabling } } },
    languageOptions: {
      parserOptions: {
        projectService: true,
        tsconfigRootDir: import.meta.dirname,
        extraFileExtensions: ['.svelte'],
      },
    },
    rules: {
      'bedplate/reason-for-disabling': 'error',
      eqeqeq: 'error',
      'no-constant-condition': 'error',
      'no-control-regex': 'error',
      'no-dupe-else-if': 'error',
      'no-empty': 'error',
      'no-fallthrough': 'error',
      'no-irregular-whitespace': 'error',
      'no-self-assign': 'error',
      'no-self-compare': 'error',
      'no-sparse-arrays': 'error',
      'no-unsafe-finally': 'error',
      'no-useless-escape': 'error',
      'no-undef': 'off', // the type check knows the names of each layer better
      '@typescript-eslint/ban-ts-comment': [
        'error',
        { 'ts-expect-error': 'allow-with-description', minimumDescriptionLength: 5 },
      ],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: true },
      ],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true, requireDefaultForNonUnion: true },
      ],
    },
  },
  { files: ['*.js'], extends: [typescript.configs.disableTypeChecked] },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: typescript.parser } },
  },
  {
    // Tests read JSON and second opinions that come without types, and assert what they make of them. In plain JavaScript
    // a cast is a comment, which these rules do not see.
    files: ['tests/**', '**/*.mjs'],
    rules: {
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
    },
  },
  {
    // Rules that ask for types took half of the whole lint here, to look at what svelte-check has looked at with the
    // props of every component known; the state classes (.svelte.ts) keep them.
    files: ['**/*.svelte'],
    extends: [typescript.configs.disableTypeChecked],
  },
  {
    files: ['core/**', 'renderer/**'],
    rules: { 'no-console': 'error' },
  },
  {
    // Clock and chance come into core as arguments, so that the same input always gives the same answer.
    files: ['core/**'],
    rules: {
      'no-restricted-properties': [
        'error',
        { object: 'Date', property: 'now', message: 'Take the time as an argument.' },
        { object: 'Math', property: 'random', message: 'Take the chance as an argument.' },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
          message: 'Take the time as an argument.',
        },
      ],
    },
  },
)
