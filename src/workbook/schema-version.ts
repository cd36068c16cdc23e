/** Number of the form that workbooks' tables have; raised when a program of before would read a newer workbook wrongly. */
export const schemaVersion = 1;

/** Name under which a workbook file says it. */
export const schemaProperty = 'Solebench tables';
