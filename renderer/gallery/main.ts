import { mount } from 'svelte'
import '../look/fonts.css'
import '../look/tokens.css'
import '../look/base.css'
import '../look/list.css'
import '../look/print.css'
import Gallery from './Gallery.svelte'
import Stage from './Stage.svelte'

const target = document.getElementById('window')
if (!target) throw new Error('the page has no place for the gallery')

/* One page for both: the gallery shows each entry in frames of the window's size, and a frame is a stage. */
mount(location.search.startsWith('?stage') ? Stage : Gallery, { target })
