// The thread that picks. A worker of Node 20 starts outside tsx and cannot read .ts by itself: tsx is asked first.
import { parentPort } from 'node:worker_threads';
import { register } from 'tsx/esm/api';

register();
const { serve } = await import('./serve.ts');
await serve(parentPort);
