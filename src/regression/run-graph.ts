import { neededPackage } from '../base/needed-package.js';
import type { Tensor } from './tensor.js';

/** A graph made ready to run. */
export interface RunningGraph {
  /** Computes only the outputs asked for; all when left out. */
  run(
    inputs: Readonly<Record<string, Tensor>>,
    outputs?: readonly string[],
  ): Promise<Readonly<Record<string, Float32Array>>>;
  close(): Promise<void>;
}

/**
 * The ONNX runtime, loaded only here and only now.
 *
 * @throws {InputError} `missing-package` when it is not installed, or not for this machine
 */
export const loadRuntime = (): Promise<typeof import('onnxruntime-node')> =>
  neededPackage(
    'onnxruntime-node',
    () => import('onnxruntime-node'),
    'The fitted regression',
    'Install flarewise again.',
  );

/**
 * Makes an ONNX graph ready, in one thread: several scorers may run side by side, and the order of sums
 * stays the same.
 *
 * @throws {InputError} `missing-package` without the runtime
 * @throws whatever the runtime throws when it refuses the file
 */
export async function openGraph(file: Uint8Array): Promise<RunningGraph> {
  const { InferenceSession, Tensor: RuntimeTensor } = await loadRuntime();
  const session = await InferenceSession.create(file, {
    executionProviders: ['cpu'],
    graphOptimizationLevel: 'all',
    intraOpNumThreads: 1,
    interOpNumThreads: 1,
    logSeverityLevel: 3, // errors only: nothing of the runtime's own belongs on a person's screen
  });
  return {
    async run(inputs, outputs = session.outputNames) {
      const feeds = Object.entries(inputs).map(([name, { dims, values }]) => [
        name,
        new RuntimeTensor('float32', values, dims),
      ]);
      const results = await session.run(Object.fromEntries(feeds), outputs);
      return Object.fromEntries(
        Object.entries(results).map(([name, result]) => [name, result.data as Float32Array]),
      );
    },
    close: () => session.release(),
  };
}
