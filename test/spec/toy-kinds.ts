import * as z from 'zod';
import type { Kinds } from '../../src/spec/read-jigs.js';

/** Two small kinds with every sort of field, so that the spec stage is tested without the jigs. */
export const toyKinds: Kinds = {
  collar: {
    schema: (f) =>
      z.strictObject({
        on: f.round({ about: 'Round that it sits on' }),
        angle: f.angle({ about: 'Angle between the axes', min: Math.PI / 18 }),
        offset: f.length({ about: 'Distance between the axes', min: -150, max: 150 }).default(0),
        pin: z.strictObject({ diameter: f.length({ about: 'Diameter of the pin', min: 3, max: 40 }), through: f.flag({ about: 'Whether it goes through' }).default(false) }).optional(),
      }),
  },
  'slot-row': {
    schema: (f) =>
      z
        .strictObject({
          board: z.strictObject({ length: f.length({ about: 'Length of the board', min: 50, max: 60_000 }) }),
          slots: z.union([
            z.strictObject({ count: f.count({ about: 'How many slots', max: 500 }), pitch: f.length({ about: 'From slot to slot', min: 5 }) }),
            z.array(z.strictObject({ at: f.length({ about: 'Station of the slot', max: 60_000 }), item: f.round({ about: 'What lies in it' }) })).min(1),
          ]),
          edge: f.choice(['front', 'rear'], { about: 'Which edge' }).default('front'),
          slack: f.number({ about: 'Slack over the item, a ratio', min: 0, max: 1 }).default(0.1),
          note: f.text({ about: 'A note for the sheet', max: 40 }).optional(),
        })
        .superRefine((row, ctx) => {
          const wide = !Array.isArray(row.slots) && row.slots.count * row.slots.pitch > row.board.length;
          if (wide) ctx.addIssue({ code: 'custom', path: ['slots', 'count'], message: 'is more than the board holds' });
        }),
  },
};
