export { type SampleCall, sampleCalls } from '../../src/help/samples';
