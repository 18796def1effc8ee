import js from '@eslint/js'
import svelte from 'eslint-plugin-svelte'
import globals from 'globals'
import ts from 'typescript-eslint'

export default ts.config(
  {
    ignores: [
      '**/out/**',
      '**/dist/**',
      '**/coverage/**',
      '**/reports/**',
      '**/.cache/**',
      '**/.stryker-tmp/**',
    ],
  },
  js.configs.recommended,
  ...ts.configs.strict,
  ...svelte.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      'no-undef': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true }],
      eqeqeq: 'error',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteFeatures: { runes: true } } },
    rules: {
      'no-restricted-syntax': [
        'error',
        {
          selector: 'SvelteAwaitBlock',
          message: 'It keeps what it showed in memory: use ui/Promised.svelte.',
        },
      ],
    },
  },
)
