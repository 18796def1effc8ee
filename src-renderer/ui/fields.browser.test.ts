import { userEvent } from 'vitest/browser'
import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import NumberField from './NumberField.svelte'
import { reader } from './reader.svelte'
import SelectField from './SelectField.svelte'
import SliderField from './SliderField.svelte'

const numberField = async (extra: Partial<{ value: number; optional: boolean; whole: boolean }> = {}) => {
  const onchange = vi.fn()
  const screen = await render(NumberField, {
    label: 'Bar diameter',
    value: 10,
    unit: 'mm',
    min: 1,
    max: 60,
    onchange,
    ...extra,
  })
  return { onchange, field: screen.getByRole('spinbutton', { name: 'Bar diameter' }), screen }
}

test('a number field gives each good number, in the stored unit', async () => {
  const { onchange, field } = await numberField()
  await field.fill('12,5')
  expect(onchange).toHaveBeenLastCalledWith(12.5)
})

test.each([
  ['abc', 'Bar diameter needs a number. It stays at 10 mm.'],
  ['', 'Bar diameter needs a number. It stays at 10 mm.'],
  ['NaN', 'Bar diameter needs a number. It stays at 10 mm.'],
  ['-3', 'Bar diameter must be at least 1 mm. It stays at 10 mm.'],
  ['61', 'Bar diameter must be at most 60 mm. It stays at 10 mm.'],
])('%j is refused by name, and the value stays', async (typed, message) => {
  const { onchange, field, screen } = await numberField()
  await field.fill(typed)
  await expect.element(screen.getByRole('alert')).toHaveTextContent(message)
  await expect.element(field).toHaveAttribute('aria-invalid', 'true')
  expect(onchange).not.toHaveBeenCalled()
})

test('escape puts the value back, and arrows step it', async () => {
  const { onchange, field } = await numberField()
  await field.fill('abc')
  await userEvent.keyboard('{Escape}')
  await expect.element(field).toHaveValue('10')
  await userEvent.keyboard('{ArrowUp}')
  expect(onchange).toHaveBeenLastCalledWith(11)
})

test('an optional field may be emptied', async () => {
  const { onchange, field } = await numberField({ optional: true })
  await field.fill('')
  expect(onchange).toHaveBeenLastCalledWith(undefined)
})

test('imperial shows inches and still stores millimetres', async () => {
  reader.units = 'imperial'
  const { onchange, field } = await numberField({ value: 25.4 })
  await expect.element(field).toHaveValue('1')
  await field.fill('0.5')
  expect(onchange).toHaveBeenLastCalledWith(12.7)
  reader.units = 'metric'
})

test('where a decimal stands behind a comma, a field shows and says it so, and either mark is typed', async () => {
  reader.decimalMark = ','
  const { onchange, field, screen } = await numberField({ value: 9.5 })
  await expect.element(field).toHaveValue('9,5')
  await expect.element(field).toHaveAttribute('aria-valuetext', '9,5 mm')
  // What machines read stays a number.
  await expect.element(field).toHaveAttribute('aria-valuenow', '9.5')
  await field.fill('12,25')
  expect(onchange).toHaveBeenLastCalledWith(12.25)
  await field.fill('12.75')
  expect(onchange).toHaveBeenLastCalledWith(12.75)
  await field.fill('1.234,5')
  await expect
    .element(screen.getByRole('alert'))
    .toHaveTextContent('Bar diameter needs a number. It stays at 9,5 mm.')
  reader.decimalMark = '.'
})

test('a slider and its number twin carry the same name and say the unit', async () => {
  const onchange = vi.fn()
  const screen = await render(SliderField, {
    label: 'Length',
    value: 18,
    unit: 'm',
    min: 2,
    max: 80,
    step: 0.5,
    onchange,
  })
  const slider = screen.getByRole('slider', { name: 'Length' })
  await expect.element(slider).toHaveAttribute('aria-valuetext', '18 m')
  slider.element().dispatchEvent(new Event('focus'))
  ;(slider.element() as HTMLInputElement).focus()
  await userEvent.keyboard('{ArrowRight}')
  expect(onchange).toHaveBeenLastCalledWith(18.5)
  await screen.getByRole('spinbutton', { name: 'Length' }).fill('20')
  expect(onchange).toHaveBeenLastCalledWith(20)
})

test('a select gives the chosen value or none', async () => {
  const onchange = vi.fn()
  const screen = await render(SelectField, {
    label: 'Bottom',
    value: 'a',
    none: 'Not given',
    options: [
      { value: 'a', label: 'Mud' },
      { value: 'b', label: 'Sand' },
    ],
    onchange,
  })
  await screen.getByLabelText('Bottom').selectOptions('Sand')
  expect(onchange).toHaveBeenLastCalledWith('b')
  await screen.getByLabelText('Bottom').selectOptions('Not given')
  expect(onchange).toHaveBeenLastCalledWith(undefined)
})
