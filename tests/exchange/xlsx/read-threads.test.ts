import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/exchange/xlsx/read';
import { packageOf, relations } from './package';

const cell = '<sheetData><row r="1"><c r="D1"><v>4</v></c></row></sheetData>';
/** As the office suite writes it for programs that know no answers (seen in a file that it saved). */
const NOTICE =
  '[Threaded comment]\n\nYour version of Excel allows you to read this threaded comment; however, any edits to it will get removed ' +
  'if the file is opened in a newer version of Excel. Learn more: https://go.microsoft.com/fwlink/?linkid=870924\n\nComment:\n    ';
const comments = (text: string) =>
  `<comments><authors><author>tc={1}</author></authors><commentList><comment ref="D1" authorId="0"><text><t>${text}</t></text></comment></commentList></comments>`;
const plain = {
  'xl/worksheets/_rels/sheet1.xml.rels': relations(['comments', '../comments1.xml']),
  'xl/comments1.xml': comments(`${NOTICE}Ask the tannery\nReply:\n    They have some`),
};

describe('a comment with answers', () => {
  it('keeps its words alone where the file has only what stands for it', () => {
    expect(readBook(packageOf(cell, plain)).book.sheets[0]?.comments).toEqual([
      { row: 0, column: 3, author: '', text: 'Ask the tannery\nReply:\nThey have some' },
    ]);
  });

  it('keeps its words, its answers and who gave them', () => {
    const threads =
      '<ThreadedComments><threadedComment ref="D1" personId="{a}" id="{1}"><text>Ask the tannery</text></threadedComment>' +
      '<threadedComment ref="D1" personId="{b}" id="{2}" parentId="{1}"><text>They have some</text></threadedComment></ThreadedComments>';
    const { book } = readBook(
      packageOf(cell, {
        ...plain,
        'xl/worksheets/_rels/sheet1.xml.rels': relations(
          ['comments', '../comments1.xml'],
          ['threadedComment', '../threadedComments/threadedComment1.xml'],
        ),
        'xl/threadedComments/threadedComment1.xml': threads,
        'xl/persons/person.xml':
          '<personList><person displayName="Ida" id="{a}"/><person displayName="Per" id="{b}"/></personList>',
        'xl/_rels/workbook.xml.rels': relations(
          ['worksheet', 'worksheets/sheet1.xml'],
          ['person', 'persons/person.xml'],
        ),
      }),
    );
    expect(book.sheets[0]?.comments).toEqual([
      { row: 0, column: 3, author: 'Ida', text: 'Ask the tannery\nPer: They have some' },
    ]);
  });

  it('leaves other comments as they are', () => {
    const other = { ...plain, 'xl/comments1.xml': comments('[Threaded comment] is what it says') };
    expect(readBook(packageOf(cell, other)).book.sheets[0]?.comments[0]?.text).toBe(
      '[Threaded comment] is what it says',
    );
  });
});
