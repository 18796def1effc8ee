/**
 * Drag coefficient of netting on the projected area of its twine.
 *
 * Knotless 1 + 2.73 (d/a) + 3.12 (d/a)², knotted 1 + 3.77 (d/a) + 9.37 (d/a)².
 *
 * @param slenderness twine diameter over bar length d/a [-], at least 0; meant for open netting, below about 0.2
 * @param knotted     whether the meshes are knotted
 * @returns drag coefficient on the twine's projected area [-]
 * @source Milne 1972, as quoted in reviews of net drag (from memory)
 */
export function milneTwineDrag(slenderness: number, knotted: boolean): number {
  const [linear, square] = knotted ? [3.77, 9.37] : [2.73, 3.12]
  return 1 + linear * slenderness + square * slenderness ** 2
}
