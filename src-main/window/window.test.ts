import { describe, expect, test, vi } from 'vitest'
import type { Session, WebContents } from 'electron'
import { mkdir, writeFile, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { noteCrash } from './crash-log'
import { dialog, shell } from './electron-stand-in'
import { denyPermissions, lockDown } from './lock-down'
import { acceleratorOf, menuTemplate } from './menu'
import { documentsIn, openedNotice } from './opened-files'
import { revive } from './revive'
import { dataFolderArgument } from './start-arguments'
import { rememberBounds, rememberedBounds } from './window-memory'
import { firstBounds } from './window-bounds'
import { windowOptions } from './window-options'

const folder = temporaryFolder()

test('the page is shut off from the system', () => {
  expect(windowOptions('/preload.cjs', firstBounds).webPreferences).toMatchObject({
    preload: '/preload.cjs',
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    webSecurity: true,
    webviewTag: false,
  })
})

describe('a locked window', () => {
  function locked() {
    const listeners = new Map<string, (event: { url: string; preventDefault: () => void }) => void>()
    let openWindow: ((details: { url: string }) => { action: string }) | undefined
    const contents = {
      on: (name: string, listener: (event: { url: string; preventDefault: () => void }) => void) =>
        listeners.set(name, listener),
      setWindowOpenHandler: (handler: typeof openWindow) => (openWindow = handler),
    }
    lockDown(contents as unknown as WebContents, new Set(['wdfw.wa.gov']))
    return {
      goes: (name: string, url: string) => {
        const preventDefault = vi.fn()
        listeners.get(name)?.({ url, preventDefault })
        return preventDefault.mock.calls.length === 0
      },
      opens: (url: string) => openWindow?.({ url }).action,
    }
  }

  test.each(['will-navigate', 'will-redirect', 'will-frame-navigate'])(
    '%s stays on its own pages',
    (name) => {
      const { goes } = locked()
      expect(goes(name, 'app://main/index.html')).toBe(true)
      expect(goes(name, 'https://wdfw.wa.gov/')).toBe(false)
      expect(goes(name, 'file:///etc/passwd')).toBe(false)
    },
  )

  test('no page is embedded', () => {
    expect(locked().goes('will-attach-webview', 'app://main/index.html')).toBe(false)
  })

  test('no window opens; a cited page goes to the browser once agreed, no other is even asked about', async () => {
    const ask = vi.spyOn(dialog, 'showMessageBox').mockResolvedValue({ response: 0 })
    const { opens } = locked()
    expect(opens('https://wdfw.wa.gov/a')).toBe('deny')
    expect(opens('https://example.org/')).toBe('deny')
    await vi.waitFor(() => expect(shell.opened).toEqual(['https://wdfw.wa.gov/a']))
    expect(ask).toHaveBeenCalledTimes(1)
    ask.mockResolvedValue({ response: 1 })
    opens('https://wdfw.wa.gov/b')
    await vi.waitFor(() => expect(ask).toHaveBeenCalledTimes(2))
    expect(shell.opened).toEqual(['https://wdfw.wa.gov/a'])
  })

  test('every permission is denied', () => {
    const handlers: ((...args: unknown[]) => unknown)[] = []
    const keep = (handler: (...args: unknown[]) => unknown) => void handlers.push(handler)
    denyPermissions({
      setPermissionRequestHandler: keep,
      setPermissionCheckHandler: keep,
      setDevicePermissionHandler: keep,
    } as unknown as Session)
    const answer = vi.fn()
    const returned = handlers.map((handler) => handler({}, 'geolocation', answer))
    expect(answer).toHaveBeenCalledWith(false)
    expect(returned.slice(1)).toEqual([false, false])
  })
})

test.each([
  ['opened anew', 0, [1, 0]],
  ['closed', 1, [0, 1]],
])('a window whose page died is %s, as its reader says', async (_, response, calls) => {
  vi.spyOn(dialog, 'showMessageBox').mockResolvedValue({ response })
  const window = { reload: vi.fn(), destroy: vi.fn(), isDestroyed: () => false }
  await revive(window)
  expect([window.reload.mock.calls.length, window.destroy.mock.calls.length]).toEqual(calls)
})

describe('the menu', () => {
  const groups = [
    {
      label: 'Edit',
      entries: [
        { command: 'undo', label: 'Undo', keys: 'Ctrl+Z' },
        { command: 'keys', label: 'Keys', keys: '?' },
      ],
    },
  ]

  test('shows the page’s commands, sends the one chosen, and leaves the keys to the page', () => {
    const choose = vi.fn()
    const edit = menuTemplate('linux', groups, choose).find(({ label }) => label === 'Edit')
    const [undo, keys] = edit?.submenu as { click: () => void }[]
    expect(undo).toMatchObject({ label: 'Undo', accelerator: 'CmdOrCtrl+Z', registerAccelerator: false })
    expect(keys).not.toHaveProperty('accelerator')
    undo?.click()
    expect(choose).toHaveBeenCalledWith('undo')
  })

  test('is headed by the program’s own on a Mac', () => {
    expect(menuTemplate('darwin', [], vi.fn())[0]).toEqual({ role: 'appMenu' })
  })

  test.each([
    ['Ctrl+Shift+Z', 'CmdOrCtrl+Shift+Z'],
    ['Alt+1', 'Alt+1'],
    ['F1', 'F1'],
    ['?', undefined],
    ['Ctrl+ArrowUp', undefined],
    ['', undefined],
  ])('%s is %s to the system', (keys, accelerator) => {
    expect(acceleratorOf(keys)).toBe(accelerator)
  })
})

describe('what the program is started with', () => {
  test('documents among the arguments', () => {
    expect(
      documentsIn(
        ['potwright', '--data', '/x', '/a/b.pot.json', 'c.WATER.JSON', 'd.json', '--e.pot.json'],
        '/boat',
      ),
    ).toEqual(['/a/b.pot.json', '/boat/c.WATER.JSON'])
  })

  test('a desktop hands documents over by their address', () => {
    const addresses = [
      'file:///a/my%20%232.pot.json',
      'file://elsewhere/a.pot.json',
      'file:///a%2Fb.pot.json',
    ]
    expect(documentsIn(['potwright', ...addresses], '/boat')).toEqual(['/a/my #2.pot.json'])
  })

  test.each([
    [['potwright', '--data', '/x'], '/x'],
    [['potwright', '--data=/x'], '/x'],
    [['potwright'], undefined],
    [['potwright', '--data'], undefined],
  ])('the data folder in %j', (args, expected) => {
    expect(dataFolderArgument(args)).toBe(expected)
  })

  test('a file opened from outside is handed on as text; what is no small file is not', async () => {
    await writeFile(join(folder(), 'a.pot.json'), '{}')
    await mkdir(join(folder(), 'b.pot.json'))
    expect(await openedNotice(join(folder(), 'a.pot.json'))).toEqual({
      kind: 'opened',
      fileName: 'a.pot.json',
      text: '{}',
    })
    expect(await openedNotice(join(folder(), 'b.pot.json'))).toBeUndefined()
    expect(await openedNotice(join(folder(), 'gone.pot.json'))).toBeUndefined()
  })
})

test('the window remembers where it was, and forgets what cannot be read', async () => {
  expect(await rememberedBounds(folder())).toEqual(firstBounds)
  const bounds = { x: 1, y: 2, width: 900, height: 700, maximised: true }
  await rememberBounds(folder(), bounds)
  expect(await rememberedBounds(folder())).toEqual(bounds)
  await writeFile(join(folder(), 'window.json'), 'null')
  expect(await rememberedBounds(folder())).toEqual(firstBounds)
})

test('crashes are noted in a file of this machine, which does not grow for ever', async () => {
  const at = new Date('2026-12-05T10:00:00Z')
  noteCrash(folder(), at, 'The window stopped.', new Error('out of line'))
  const path = join(folder(), 'crashes.log')
  expect(await readFile(path, 'utf8')).toMatch(
    /^2026-12-05T10:00:00.000Z The window stopped.\nError: out of line/,
  )
  await writeFile(path, 'x'.repeat(600_000))
  noteCrash(folder(), at, 'Again.', { reason: 'killed' })
  expect(await readFile(path, 'utf8')).toMatch(/^2026.*Again.\n{"reason":"killed"}/)
})
