import type { Configuration } from 'electron-builder'
import { fileURLToPath } from 'node:url'

const licence = fileURLToPath(new URL('../LICENSE', import.meta.url))

/**
 * What `npm run package` makes. The build has taken in every library, so a package holds `out/` and no modules.
 *
 * Only Linux knows a file by two endings. To macOS a pot is a `.json` that Potwright can open beside others;
 * Windows would hand every `.json` to it, so there pots are opened from the menu or dropped on the window.
 */
export const packages: Configuration = {
  // Names of no one's: the program has no home on the net.
  appId: 'local.potwright',
  extraMetadata: { homepage: 'https://potwright.invalid', desktopName: 'potwright.desktop' },
  productName: 'Potwright',
  copyright: 'Potwright contributors, MIT licence',
  directories: { output: 'dist', buildResources: 'assets/icons' },
  files: ['out/**', 'package.json', 'LICENSE'],
  asar: true,
  npmRebuild: false,
  publish: null,
  artifactName: '${name}-${version}-${os}-${arch}.${ext}',
  electronFuses: {
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    grantFileProtocolExtraPrivileges: false,
    enableCookieEncryption: true,
  },
  win: {
    target: [{ target: 'nsis', arch: ['x64', 'arm64'] }],
    icon: 'assets/icons/icon.ico',
  },
  nsis: { license: 'LICENSE', differentialPackage: false },
  mac: {
    target: [
      { target: 'dmg', arch: ['x64', 'arm64'] },
      { target: 'zip', arch: ['x64', 'arm64'] },
    ],
    icon: 'assets/icons/icon.icns',
    category: 'public.app-category.utilities',
    hardenedRuntime: true,
    fileAssociations: [{ ext: 'json', name: 'Pot design', role: 'Editor', rank: 'Alternate' }],
  },
  linux: {
    target: [
      { target: 'AppImage', arch: ['x64', 'arm64'] },
      { target: 'deb', arch: ['x64', 'arm64'] },
    ],
    icon: 'assets/icons',
    category: 'Utility',
    synopsis: 'Puts a crab pot together and checks it',
    maintainer: 'Potwright contributors <contributors@potwright.invalid>',
    // The desktop knows by it that a window is this program's.
    syncDesktopName: true,
    fileAssociations: [
      { ext: 'pot.json', description: 'Pot design', mimeType: 'application/x-potwright-pot+json' },
      { ext: 'water.json', description: 'Water to fish', mimeType: 'application/x-potwright-water+json' },
    ],
  },
  deb: {
    depends: [
      ...['libgtk-3-0', 'libnss3', 'libnotify4', 'libsecret-1-0', 'libxss1', 'libxtst6', 'xdg-utils'],
      // The builder asks for none of these, and the program does not start without. Of the two names the newer comes
      // first: where both are served, the older may be another package's.
      ...['libx11-xcb1', 'libgbm1', 'libasound2t64 | libasound2'],
    ],
    recommends: ['libgl1'],
    fpm: [`${licence}=/usr/share/doc/potwright/copyright`],
  },
  // The older one asks for a library that systems no longer bring, and starts the program without its sandbox.
  toolsets: { appimage: '1.0.3' },
}
