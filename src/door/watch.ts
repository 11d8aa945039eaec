export { pageOfTrouble, type Renewing, renewingPage } from '../files/proof/renewing-page.js'
export { type KeptWork, keepWork } from '../pipeline/kept-work.js'
export { disk } from '../plan/disk/disk.js'
export { fileState } from '../plan/disk/file-state.js'
