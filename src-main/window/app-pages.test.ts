import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { pageFile, servePage } from './app-pages'
import { contentPolicy } from './content-policy'

const folder = temporaryFolder()
const pages = () => join(folder(), 'pages')

describe('which file an address stands for', () => {
  test.each([
    ['app://main/', 'index.html'],
    ['app://main/index.html', 'index.html'],
    ['app://main/index.html?x=1#bench', 'index.html'],
    ['app://main/assets/a%20b.js', 'assets/a b.js'],
    ['app://main/assets/../index.html', 'index.html'],
  ])('%s is %s', (address, file) => {
    expect(pageFile(address, '/pages')).toBe(join('/pages', file))
  })

  test.each([
    'app://main/..%2fsecret.txt',
    'app://main/%2e%2e/%2e%2e%2fsecret.txt',
    'app://main/assets/..%2f..%2fsecret.txt',
    'app://main/..%5csecret.txt',
    'app://main/assets\\..\\..\\secret.txt',
    'app://main/index.html%00.png',
    'app://main/%E0%A4%A',
    'app://main//etc/passwd/..%2f..%2f..%2fetc/passwd',
    'app://other/index.html',
    'app://main.example/index.html',
    'https://main/index.html',
    'file:///etc/passwd',
    'nonsense',
  ])('%s is none', (address) => {
    const file = pageFile(address, '/pages')
    expect(file === undefined || file.startsWith('/pages/')).toBe(true)
    expect(file ?? '').not.toMatch(/secret|\0/)
  })
})

describe('answering', () => {
  const prepared = async () => {
    await mkdir(pages())
    await writeFile(join(pages(), 'index.html'), '<title>Potwright</title>')
    await writeFile(join(folder(), 'secret.txt'), 'secret')
  }

  test('a page comes with the content policy and its type', async () => {
    await prepared()
    const response = await servePage('app://main/', pages())
    expect(response.status).toBe(200)
    expect(response.headers.get('Content-Type')).toBe('text/html; charset=utf-8')
    expect(response.headers.get('Content-Security-Policy')).toBe(contentPolicy)
    expect(await response.text()).toContain('Potwright')
  })

  test.each(['app://main/..%2fsecret.txt', 'app://main/nothing.js', 'app://main/.', 'app://elsewhere/'])(
    '%s is not found, or the start page',
    async (address) => {
      await prepared()
      const text = await (await servePage(address, pages())).text()
      expect(text).not.toContain('secret')
      expect(text).toMatch(/Not found|Potwright/)
    },
  )
})

test('the policy lets nothing in from elsewhere and no script in line', () => {
  expect(contentPolicy).toMatch(/^default-src 'none'/)
  expect(contentPolicy).not.toMatch(/unsafe|https?:|\*/)
  for (const rule of [
    "script-src 'self'",
    "style-src 'self'",
    "connect-src 'self'",
    "frame-ancestors 'none'",
  ])
    expect(contentPolicy.split('; ')).toContain(rule)
})
