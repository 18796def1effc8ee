import type { Pot } from '@shared/schema/pot'

/** Parts of a design whose types the schema does not name. */
export type Ballast = NonNullable<Pot['ballast']>[number]
export type Door = NonNullable<Pot['doors']>[number]
export type Chafe = NonNullable<Pot['chafe']>
export type Bridle = NonNullable<Pot['bridle']>
export type Label = NonNullable<NonNullable<Pot['marks']>['float']>
export type RopeWeight = NonNullable<NonNullable<Pot['rope']>['weights']>[number]
