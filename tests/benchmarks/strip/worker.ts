import { serve } from '../../../src/workers/serve';
import { packStrip } from './pack-strip';

serve(packStrip);
