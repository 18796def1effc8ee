import type { AppError } from '@shared/units/result'

/** 0 all hold · 1 something fails, is close or cannot be told · 2 bad input or usage. */
export type ExitCode = 0 | 1 | 2

/** What a command may touch of the world around it; tests bring their own. */
export interface Terminal {
  readonly write: (text: string) => void
  readonly writeError: (text: string) => void
  readonly readStandardInput: () => Promise<string>
  readonly env: Readonly<Record<string, string | undefined>>
  readonly platform: NodeJS.Platform
  readonly now: () => Date
}

export interface Command {
  readonly name: string
  /** One line for the list of commands. */
  readonly does: string
  readonly usage: string
  readonly run: (args: readonly string[], terminal: Terminal) => Promise<ExitCode>
}

/** Bad input or usage: ends the command with exit code 2 and its message on standard error. */
export class CommandRefused extends Error {
  constructor(
    message: string,
    readonly path?: string,
  ) {
    super(message)
    this.name = 'CommandRefused'
  }

  static from(error: AppError, where: string): CommandRefused {
    return new CommandRefused(`${where}: ${error.message}`, error.path || undefined)
  }
}
