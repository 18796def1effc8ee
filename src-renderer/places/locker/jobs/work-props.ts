import type { PartState, PotState } from '@shared/journal/locker-state'

/** What every dialog for work on a part is given. */
export interface WorkProps {
  part: PartState
  pot: PotState
  onclose: () => void
}
