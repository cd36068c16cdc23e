/** The look's colours in light; a palette turns them into those of the theme when cells are drawn. */
export const colours = {
  desk: '#E4E9E9',
  paper: '#FFFFFF',
  tint: '#EEF2F2',
  ink: '#14191B',
  ink2: '#465156',
  edge: '#6B797E',
  line: '#C6CFD1',
  accent: '#00596B',
  wash: '#DCEDF0',
  signal: '#981D13',
} as const;
