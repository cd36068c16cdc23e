import { perform } from '../core/cutting/search/perform';
import { serve } from './serve';

serve(perform);
