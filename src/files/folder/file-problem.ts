import { errorAt, type Place, type Problem } from '../../problems.js'
import { UnreadablePicture } from '../page/unreadable-picture.js'
import { type FileSystem, systemCode } from './file-system.js'
import { LinkToNothing } from './make-folders.js'

/** Another run of the same plan has not let go of its folder; the message is the path of its lock. */
export class AnotherRunIsWriting extends Error {}

/** What the system says when a file cannot be written, put in plain words; anything else is a fault of ours and is thrown on. */
export function fileProblem(error: unknown, folder: string, kind: FileSystem['kind']): Problem {
  const place = { file: folder }
  if (kind === 'windows' && isHeldOpen(error)) return heldOpen(place)
  if (error instanceof LinkToNothing)
    return errorAt(
      { file: error.message },
      'this is a link that leads nowhere, and a folder is needed',
      'Remove the link, or choose another folder with --out. Nothing was changed.',
    )
  if (error instanceof UnreadablePicture)
    return errorAt(place, error.message, 'Save the picture again as PNG, JPEG or SVG, or leave it out.')
  if (error instanceof AnotherRunIsWriting)
    return errorAt(
      place,
      'another run is still writing this plan',
      `Wait for it to end. If there is none, delete the folder ${error.message} and run again.`,
    )
  switch (systemCode(error)) {
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return errorAt(
        place,
        'this folder cannot be written to',
        'Choose another folder with --out, or change who may write here. Nothing was changed.',
      )
    case 'ENOTDIR':
    case 'EEXIST':
      return errorAt(
        place,
        'a file stands where a folder is needed',
        'Choose another folder with --out, or move that file away. Nothing was changed.',
      )
    case 'ENOSPC':
    case 'EDQUOT':
      return errorAt(
        place,
        'the disk is full',
        'Free some space, or choose a folder on another disk with --out. The last set is as it was.',
      )
    case 'EBUSY':
    case 'ETXTBSY':
      return heldOpen(place)
    case 'ENAMETOOLONG':
      return errorAt(place, 'the path is too long', 'Give the plan file or the item a shorter name.')
    case 'ELOOP':
      return errorAt(place, 'links lead round in a circle', 'Choose another folder with --out.')
    case 'EMFILE':
    case 'ENFILE':
      return errorAt(place, 'too many files are open at once', 'Run again with --jobs 1.')
    case undefined:
      throw error
    default:
      return errorAt(
        place,
        `the files could not be written (${systemCode(error)})`,
        'Choose another folder with --out. The last set is as it was.',
      )
  }
}

/** On Windows a file that a program holds open can be neither moved nor removed, and is told as forbidden. */
function isHeldOpen(error: unknown): boolean {
  const moving =
    error instanceof Error &&
    'syscall' in error &&
    ['rename', 'unlink', 'rmdir', 'rm'].includes(String(error.syscall))
  return moving && ['EPERM', 'EACCES', 'EBUSY', 'ENOTEMPTY'].includes(systemCode(error) ?? '')
}

function heldOpen(place: Place): Problem {
  return errorAt(
    place,
    'a file of the last set is open in another program',
    'Close it and run again. The last set is as it was.',
  )
}
