import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { budget } from './build/budget.ts';
import { look } from './build/look.ts';
import { precache } from './build/precache.ts';
import { steadyBase } from './build/steady-base.ts';

export default defineConfig({
  base: './',
  plugins: [react(), look(), steadyBase(), precache(), budget()],
  worker: { format: 'es' },
  build: {
    target: 'es2023',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    rolldownOptions: {
      treeshake: {
        moduleSideEffects: [
          {
            test: /packages\/(?:units|words|physics|equipment|service|papers|journal)\/src\//u,
            sideEffects: false,
          },
        ],
      },
    },
  },
});
