import type { WearState } from '@shared/verdicts/check-input'

/** An owned pot whose design lies on the Bench, with what use has done to it. */
interface WornPot extends WearState {
  readonly number: string
  readonly design: string
}

/** Which owned pot the Bench checks as it is now; a design is checked as new unless one was brought from the Locker. */
class Worn {
  current = $state.raw<WornPot>()

  /** What use has done, where the design on the Bench is the one that was brought. */
  of(design: string): WornPot | undefined {
    return this.current?.design === design ? this.current : undefined
  }
}

export const worn = new Worn()
