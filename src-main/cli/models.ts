import { fishingModels } from '@shared/fishing/verify'
import { physicsModels } from '@shared/physics/verify/registry'
import type { ModelRegistry } from '@shared/schema/vector'
import { wearModels } from '@shared/wear/verify'

/** Every model by the key that vectors and `calc` name it by. */
export const models: ModelRegistry = { ...physicsModels, ...fishingModels, ...wearModels }
