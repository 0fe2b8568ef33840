/** Customary units of the printed checks, in SI. */
export const FT = 0.3048;
export const IN = 0.0254;
export const LBF = 4.448_221_6;
export const LB_KG = 0.453_592_37;
export const PSF = 47.880_26;
export const PSI = 6894.757;
export const MPH = 0.447_04;
export const KGF = 9.806_65;
export const GRAVITY = 9.806_65;
