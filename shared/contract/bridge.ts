import type { Result } from '@shared/units/result'
import type { Channel, Reply, Request } from './contract'

/** The one way from the interface to the services: `window.bridge` in the desktop edition, HTTP in the other. */
export type Bridge = <C extends Channel>(channel: C, request: Request<C>) => Promise<Result<Reply<C>>>

/** What the services tell the interface without being asked. */
export type Notice =
  /** Something on disk changed: by another machine, another window, or by hand. Read it again. */
  | { kind: 'changed'; subject: ChangedSubject }
  /** A menu entry was chosen; commands are named by the interface. */
  | { kind: 'command'; command: string }
  /** A file was opened from outside; its text is to be imported. */
  | { kind: 'opened'; fileName: string; text: string }
  /** Something that runs by itself could not be done, such as the backup of the day. */
  | { kind: 'trouble'; message: string }
  /** How far something long is that the page asked for. */
  | { kind: 'progress'; done: number; of: number }
  /** The window is about to close: save now, then call `app:flushed`. */
  | { kind: 'closing' }

export type ChangedSubject = 'pots' | 'waters' | 'packs' | 'settings' | 'materials' | 'journal'

/** Calls the listener for every notice from now on; the function returned stops it. */
export type OnNotice = (listener: (notice: Notice) => void) => () => void
