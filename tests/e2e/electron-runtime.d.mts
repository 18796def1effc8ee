/** The test runtime's program file, where it was fetched already. */
export function fetchedRuntime(): string | undefined
/** Fetches the test runtime unless it is there, and returns its program file. */
export function fetchRuntime(): Promise<string>
