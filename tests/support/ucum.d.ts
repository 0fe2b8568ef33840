/** What the tests use of the UCUM library, which comes without types. */
declare module '@lhncbc/ucum-lhc' {
  interface Conversion {
    status: 'succeeded' | 'failed' | 'error';
    toVal: number | null;
    msg: string[];
  }
  interface Utilities {
    validateUnitString(code: string, suggest?: boolean): { status: 'valid' | 'invalid' | 'error'; ucumCode: string | null };
    convertUnitTo(from: string, value: number, to: string): Conversion;
  }
  const ucum: { UcumLhcUtils: { getInstance(): Utilities } };
  // eslint-disable-next-line no-restricted-syntax -- that is how the library gives itself out
  export default ucum;
}
