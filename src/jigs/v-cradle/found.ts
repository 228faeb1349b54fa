import type { Finding } from '../../errors/finding.js';

/** A finding before the jig's name is put to it. */
export type Found = Omit<Finding, 'jig'>;
