import { useCompiledKernel } from '../../../src/workers/compiled-engine';
import { serve } from '../../../src/workers/serve';
import { packStrip } from './pack-strip';

useCompiledKernel();

serve(packStrip);
