import { expectTypeOf, test } from 'vitest';
import type { Glance, Talk } from '../../../../bot/service.ts';
import type * as web from '../../../../bot/doors/page/web/shapes.ts';

// Checked by the compiler, which `npm test` runs first: the browser code is compiled by itself and can't share the server's types.
test('the page expects the shapes that the service gives', () => {
  expectTypeOf<Talk>().toEqualTypeOf<web.Talk>();
  expectTypeOf<Glance>().toExtend<web.Glance>();
});
