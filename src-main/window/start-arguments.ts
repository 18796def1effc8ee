/** The folder named by `--data DIR` or `--data=DIR` among the arguments of the program. */
export function dataFolderArgument(args: readonly string[]): string | undefined {
  const joined = args.find((arg) => arg.startsWith('--data='))
  if (joined !== undefined) return joined.slice('--data='.length) || undefined
  const at = args.indexOf('--data')
  return at < 0 ? undefined : args[at + 1]
}
