import type { Box } from '../../src/geometry/box.js';

/** Whether a box holds no point at all. */
export const isEmptyBox = (b: Box): boolean => b.x1 < b.x0 || b.y1 < b.y0;
