/** What holds for all that is printed. */
import { keyIn, textChange, textOf } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { ChoiceField, NumberField, TextField } from './fields.js'
import { contrastChoices } from './item-options.js'
import { PicturedChoice } from './option-fields.js'
import { Week } from './week.js'

export function Whole() {
  const { plan, names, change } = useDesk()
  const data = plan.data ?? undefined
  const set = (key: string, says: string) => (value: string) =>
    change(says, textChange(data, [keyIn(data, key)], value))
  const classFile = textOf(data, 'class file')
  const files = plan.weeks.filter(name => /\.ya?ml$/i.test(name))
  return (
    <div class="fields whole">
      <ChoiceField
        label="Paper"
        value={textOf(data, 'paper')}
        none="as usual: letter"
        choices={names.papers.map(({ name }) => name).filter(name => !name.startsWith('screen'))}
        id="at-paper"
        commit={set('paper', 'the paper')}
      />
      <ChoiceField
        label="Typeface"
        value={textOf(data, 'font')}
        none="as usual: andika"
        choices={names.fonts.map(({ name }) => name)}
        id="at-font"
        commit={set('font', 'the typeface')}
      />
      <NumberField
        label="Children in the class"
        value={textOf(data, 'children')}
        least={1}
        most={500}
        id="at-children"
        note="Not those in groups."
        commit={set('children', 'the number of children')}
      />
      <NumberField
        label="Number of the deal"
        value={textOf(data, 'seed')}
        least={0}
        most={999999}
        id="at-seed"
        note="Another number deals other boards and orders; the same number deals the same ones again."
        commit={set('seed', 'the deal')}
      />
      <PicturedChoice
        name="contrast"
        label="Ink and card"
        value={textOf(data, 'contrast')}
        none="as usual: black on white"
        choices={contrastChoices}
        id="at-contrast"
        item={{ layout: 'word-cards' }}
        of="front"
        commit={set('contrast', 'the colours')}
      />
      {files.length > 0 ? (
        <ChoiceField
          label="Class file"
          value={classFile}
          none="none"
          choices={files}
          id="at-class_file"
          note="What holds every week: your printer, your groups, what you decided about words. It lies beside the plan."
          commit={set('class file', 'the class file')}
        />
      ) : (
        classFile !== '' && (
          <TextField
            label="Class file"
            value={classFile}
            id="at-class_file"
            note="What holds every week. It must lie in the plan’s folder, or in a folder there."
            commit={set('class file', 'the class file')}
          />
        )
      )}
      <Week />
    </div>
  )
}
