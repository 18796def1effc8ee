import fc from 'fast-check'

// The same random cases on every run, so that a red run can be run again; FC_SEED tries others.
fc.configureGlobal({ seed: Number(process.env['FC_SEED'] ?? 20261125) })
