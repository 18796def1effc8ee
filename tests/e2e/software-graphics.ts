/** Arguments of the browser and of the desktop runtime on machines without a graphics card. */
export const softwareGraphics = [
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  // The page itself is drawn faster without the graphics that are themselves software; the pot is still drawn by them.
  '--disable-gpu-compositing',
]
