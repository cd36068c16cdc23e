/**
 * Entry of libraries.js: what the grid's own builds expect to find as globals. React, ReactDOM and rxjs are no longer
 * published in that form, and the grid looks for the JSX functions on React and for createRoot on ReactDOM.
 */
import * as React from 'react';
import * as jsx from 'react/jsx-runtime';
import * as ReactDOM from 'react-dom';
import * as client from 'react-dom/client';
import * as rxjs from 'rxjs';
import * as operators from 'rxjs/operators';

Object.assign(globalThis, {
  React: { ...React, ...jsx },
  ReactDOM: { ...ReactDOM, ...client },
  rxjs: { ...rxjs, operators },
});
