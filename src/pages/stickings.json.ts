import { everyBar } from '../catalogue/index.ts';
import { packStickings } from '../search/sticking-index.ts';

/** The index of stickings: an index of words cannot find them. */
export async function GET(): Promise<Response> {
  return Response.json(packStickings(await everyBar()));
}
