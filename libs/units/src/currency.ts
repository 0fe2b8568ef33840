/** Digits of the minor unit of the currencies a garden may keep its books in (ISO 4217). */
const MINOR_DIGITS: Readonly<Record<string, 0 | 2 | 3>> = {
  ...Object.fromEntries(['BIF', 'CLP', 'DJF', 'GNF', 'ISK', 'JPY', 'KMF', 'KRW', 'PYG', 'RWF', 'UGX', 'VND', 'VUV', 'XAF', 'XOF', 'XPF'].map((c) => [c, 0 as const])),
  ...Object.fromEntries(['BHD', 'IQD', 'JOD', 'KWD', 'LYD', 'OMR', 'TND'].map((c) => [c, 3 as const])),
  ...Object.fromEntries(
    ['AED', 'ARS', 'AUD', 'BGN', 'BOB', 'BRL', 'BWP', 'CAD', 'CHF', 'CNY', 'COP', 'CRC', 'CZK', 'DKK', 'EGP', 'ETB', 'EUR', 'FJD', 'GBP', 'GHS', 'GTQ', 'HKD', 'HUF', 'IDR', 'ILS', 'INR', 'KES', 'LKR', 'MAD', 'MXN', 'MYR', 'NGN', 'NOK', 'NPR', 'NZD', 'PEN', 'PHP', 'PKR', 'PLN', 'QAR', 'RON', 'RSD', 'SAR', 'SEK', 'SGD', 'THB', 'TRY', 'TWD', 'TZS', 'UAH', 'USD', 'UYU', 'ZAR', 'ZMW'].map(
      (c) => [c, 2 as const],
    ),
  ),
};

/** Digits after the point in this currency; undefined where the table does not know it. */
export const currencyDigits = (currency: string): 0 | 2 | 3 | undefined => MINOR_DIGITS[currency];
