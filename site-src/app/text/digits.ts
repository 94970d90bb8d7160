// Numbers as the print has them.
const digits = new Intl.NumberFormat('ar-u-nu-arab', { useGrouping: false });

/** A number in Arabic digits. */
export const arabicDigits = (n: number) => digits.format(n);
