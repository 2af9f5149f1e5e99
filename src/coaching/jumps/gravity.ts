/** Standard gravity, m/s², exact by definition (3rd CGPM 1901). */
export const gravity = 9.80665;
