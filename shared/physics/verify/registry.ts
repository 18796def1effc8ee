import type { ModelRegistry } from '@shared/schema/vector'
import { holdingModels } from './holding'
import { lineModels } from './line'
import { nettingAndCurrentModels } from './netting-and-current'
import { waterAndLiftingModels } from './water-and-lifting'

/** Every model of physics by the key that vectors and the command line name it by. */
export const physicsModels: ModelRegistry = {
  ...nettingAndCurrentModels,
  ...waterAndLiftingModels,
  ...lineModels,
  ...holdingModels,
}
