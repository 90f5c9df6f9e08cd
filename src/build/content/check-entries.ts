import { faultText } from '../../core/index.ts';
import { barOfExercise, barOfRudiment, layBar, type BarSpec, type LeadName } from '../../curriculum/index.ts';
import { cellLookup, checkBar, type BarSite } from './check-bars.ts';
import { faultAt, type Entry, type Library } from './library.ts';
import { knownHint } from './nearest.ts';
import { rudimentFaults } from './rudiment-facts.ts';
import type { YamlText } from './yaml-text.ts';

/** Where a bar stands that is written in the fields of a YAML file. */
function yamlSite(file: string, yaml: YamlText, at: readonly string[] = []): BarSite {
  return {
    file,
    place: yaml.positionOf(at),
    positionOf: (field, index) => yaml.positionOf(index === undefined ? [...at, field] : [...at, field, index]),
    stickingStart: yaml.textStart([...at, 'sticking']),
  };
}

/** Notes the ids of a list that name nothing. */
export function checkIds(
  library: Library,
  entry: Entry<unknown>,
  field: string,
  ids: readonly string[],
  what: string,
  known: ReadonlyMap<string, unknown>,
): void {
  ids.forEach((id, index) => {
    if (!known.has(id))
      faultAt(library, entry, [field, index], `there is no ${what} "${id}"`, knownHint(id, known.keys()));
  });
}

/** Exercises: the bar adds up under every lead that is offered, and the rudiments are there. */
export function checkExercises(library: Library): void {
  for (const entry of library.exercises.values()) {
    const { data, yaml, file } = entry;
    if (!data || !yaml) continue;
    checkIds(library, entry, 'rudiments', data.rudiments, 'rudiment', library.rudiments);
    const spec = barOfExercise(data);
    if (checkBar(library, spec, yamlSite(file, yaml)))
      data.leads.slice(1).forEach((lead, index) => checkLead(library, entry, spec, lead, index + 1));
  }
}

function checkLead(library: Library, entry: Entry<unknown>, spec: BarSpec, lead: LeadName, index: number): void {
  const laid = layBar({ ...spec, lead }, cellLookup(library));
  if (!laid.ok) faultAt(library, entry, ['leads', index], `with the lead ${lead}: ${laid.fault.message}`);
}

/** Terms: what they point to is there, and their bar adds up. */
export function checkTerms(library: Library): void {
  for (const entry of library.glossary.values()) {
    const { data, yaml, file } = entry;
    if (!data || !yaml) continue;
    checkIds(library, entry, 'see', data.see, 'term', library.glossary);
    if (data.bar) checkBar(library, data.bar, yamlSite(file, yaml, ['bar']));
  }
  checkTwice(library, [...library.glossary.values()], ['term'], ({ term }) => term.toLowerCase());
}

const FILLS = 'meter, grid, repeat and rest are chosen so that the drawing fills its bars';

/** Rudiments: the drawing fills its bars, the fields agree with the sticking, and no number comes twice. */
export function checkRudiments(library: Library): void {
  for (const entry of library.rudiments.values()) {
    const { data, yaml, id } = entry;
    if (!data || !yaml) continue;
    checkIds(library, entry, 'related', data.related, 'rudiment', library.rudiments);
    const { spec, cellOf } = barOfRudiment(id, data);
    const laid = layBar(spec, cellOf);
    if (laid.ok) rudimentFaults(data, laid).forEach(({ field, message }) => faultAt(library, entry, [field], message));
    else if (laid.fault.cell === undefined) faultAt(library, entry, ['repeat'], laid.fault.message, FILLS);
    else faultAt(library, entry, ['sticking'], faultText(data.sticking, laid.fault));
  }
  checkTwice(library, [...library.rudiments.values()], ['number'], ({ number }) => number);
}

/** Notes entries that say what an earlier one said already. */
export function checkTwice<T>(
  library: Library,
  entries: readonly Entry<T>[],
  path: string[],
  keyOf: (data: T) => unknown,
): void {
  const first = new Map<unknown, string>();
  for (const entry of entries) {
    if (!entry.data) continue;
    const key = keyOf(entry.data);
    const earlier = first.get(key);
    if (earlier) faultAt(library, entry, path, `"${String(key)}" is the ${path.join('.')} of ${earlier} already`);
    else first.set(key, entry.file);
  }
}
