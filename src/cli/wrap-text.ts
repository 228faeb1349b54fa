/** Columns of a narrow terminal. */
const columns = 100;

/** Words set in lines of at most 100 columns, each line behind `indent`, later ones two further in; a longer word stands alone. */
export const wrapText = (text: string, indent: string): string => {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(/\s+/).filter((w) => w !== '')) {
    const empty = line.trim() === '';
    if (!empty && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = `${indent}  ${word}`;
    } else {
      line += empty ? word : ` ${word}`;
    }
  }
  return [...lines, line].join('\n');
};
