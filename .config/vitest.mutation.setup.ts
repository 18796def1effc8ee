import fc from 'fast-check'
import './vitest.setup'

// A fault shows in the first few random cases or in none, and need not be brought to its smallest.
fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 20, endOnFailure: true })
