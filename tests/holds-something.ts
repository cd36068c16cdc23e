import { beforeEach, expect } from 'vitest';

// A test whose loops ran over nothing would hold nothing and be green.
beforeEach(() => expect.hasAssertions());
