import { cellsOfExercise, type ExerciseEntry } from '../../src/catalogue/index.ts';
import type { SheetFacts } from '../islands/sheet/facts.ts';

/** What a printed sheet says of an exercise, beside its notation. */
export async function sheetFacts(exercise: ExerciseEntry): Promise<SheetFacts> {
  const { title, purpose, tempo, enough, meter, sticking } = exercise.data;
  const cells = await cellsOfExercise(exercise);
  const madeOf = cells.map((cell) => `${cell.name} (${cell.sticking})`).join(', ');
  return { title, purpose, tempo, enough, meter, sticking: sticking ?? madeOf };
}
