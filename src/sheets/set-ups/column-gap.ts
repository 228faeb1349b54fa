/** Between two columns of a set-up page, mm. */
export const columnGap = 8;
