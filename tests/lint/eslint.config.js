import svelte from 'eslint-plugin-svelte'
import { defineConfig } from 'eslint/config'
import typescript from 'typescript-eslint'
import ownRules from './rules.js'

/**
 * Nothing here asks for types. Told that the parser knows them, the components' parser makes a second script of each component
 * for their sake and parses that one too, which took half the time of all. It finds out by parsing nothing, of no file.
 */
const withoutTypes = {
  parseForESLint(code, options) {
    const { services, ...parsed } = typescript.parser.parseForESLint(code, options)
    return options.filePath === undefined ? parsed : { ...parsed, services }
  },
}

// Components and what else the Svelte compiler reads. All TypeScript is looked at by oxlint (oxlint.json), with types;
// in components svelte-check has looked at these, with the props of every component known.
export default defineConfig(
  { ignores: ['dist/', '.svelte-check/', 'test-results/', '**/*.{ts,js,mjs}', '!**/*.svelte.ts'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  typescript.configs.recommended,
  svelte.configs.recommended,
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    plugins: { bedplate: ownRules },
    languageOptions: { parserOptions: { parser: withoutTypes, extraFileExtensions: ['.svelte'] } },
    rules: {
      'bedplate/reason-for-disabling': 'error',
      eqeqeq: 'error',
      'no-console': 'error',
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
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
)
