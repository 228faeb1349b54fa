import fc from 'fast-check';

// The same properties are tried on every machine, so that a run that passes here passes there. `PROPERTY_SEED=$RANDOM npm test` tries others.
fc.configureGlobal({ seed: Number(process.env['PROPERTY_SEED'] ?? 1959) });
