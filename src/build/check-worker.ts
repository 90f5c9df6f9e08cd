/** Checks the content beside the dev server, for it takes a second in which the server could show no page. */
import { parentPort, workerData } from 'node:worker_threads';
import { checkContent } from './check-content.ts';

parentPort?.on('message', () => parentPort?.postMessage(checkContent(workerData as string)));
