import '@fontsource-variable/atkinson-hyperlegible-next/wght.css'
import './ui/theme.css'
import './ui/base.css'
import { mount } from 'svelte'
import App from './App.svelte'

const target = document.getElementById('app')
if (!target) throw new Error('the page has no #app')
mount(App, { target })
